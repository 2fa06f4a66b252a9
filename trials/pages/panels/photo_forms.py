"""Photographs as they are sent in. The forms check what can be seen without decoding; they never write."""

from django import forms

from trials.models import Photo
from trials.models.fields import NumberFormField
from trials.operations.pictures import MOST_BYTES
from trials.pages.trials.writing import amend_fields


class ManyFiles(forms.ClearableFileInput):
    allow_multiple_selected = True


class PicturesField(forms.FileField):
    """Several files at once; each is refused by its name."""

    widget = ManyFiles(attrs={"accept": "image/jpeg,image/png,image/webp"})

    def clean(self, data, initial=None):
        files = data if isinstance(data, list | tuple) else [data]
        cleaned = [super(PicturesField, self).clean(one, initial) for one in files]
        for one in cleaned:
            if one and one.size > MOST_BYTES:
                size = f"{one.size / 1024**2:.1f} MB"
                raise forms.ValidationError(f"“{one.name}” has {size}; up to {MOST_BYTES // 1024**2} MB are taken.")
        return cleaned


class PhotosForm(forms.Form):
    photos = PicturesField(label="Photographs", help_text="JPEG, PNG or WebP, up to 25 MB each.")
    shows_mm = NumberFormField(
        label="What they show across", required=False, unit="mm", help_text="a scale in the picture tells"
    )
    mm_per_px = NumberFormField(
        label="Or the scale", required=False, unit="mm per pixel", help_text="of the photograph as taken"
    )
    age_h = Photo._meta.get_field("age_h").formfield(help_text="else from the time of applying")
    taken_at = forms.DateTimeField(
        label="Taken at", required=False, widget=forms.DateTimeInput(attrs={"type": "datetime-local"})
    )
    remark = forms.CharField(required=False, widget=forms.Textarea(attrs={"rows": 2}))

    def __init__(self, *args, signed=None, **kwargs):
        super().__init__(*args, **kwargs)
        if signed is not None:
            self.fields |= amend_fields()


class PhotoForm(forms.Form):
    """Puts right what was noted of one photograph."""

    mm_per_px = Photo._meta.get_field("mm_per_px").formfield(help_text="of the picture as it is shown")
    age_h = Photo._meta.get_field("age_h").formfield()
    remark = forms.CharField(required=False, widget=forms.Textarea(attrs={"rows": 2}))

    def __init__(self, *args, signed=None, **kwargs):
        super().__init__(*args, **kwargs)
        if signed is not None:
            self.fields |= amend_fields()

    def figures(self) -> dict:
        return {name: self.cleaned_data[name] for name in ("mm_per_px", "age_h", "remark")}
