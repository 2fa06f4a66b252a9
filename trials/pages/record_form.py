"""What forms of the record have in common: they check, say what can't be at the field, and never write."""

from copy import copy

from django import forms
from django.core.exceptions import ValidationError
from django.forms.models import construct_instance

from trials.operations.limits import impossible
from trials.queries.history import version


class DayInput(forms.DateInput):
    input_type = "date"

    def __init__(self, attrs=None):
        super().__init__(attrs=attrs, format="%Y-%m-%d")


class RecordForm(forms.ModelForm):
    """A form over a row. With ``parts`` it guards a change: it carries the version that is on the screen.

    The row it is given stays as it is: what was typed is in ``changed()``.
    """

    parts: tuple[str, ...] | None = None

    def __init__(self, *args, instance=None, **kwargs):
        super().__init__(*args, instance=copy(instance) if instance else None, **kwargs)
        for field in self.fields.values():
            _dress(field)
        if self.parts is not None and instance:
            self.fields["seen"] = forms.CharField(required=False, widget=forms.HiddenInput)
            if not self.is_bound:
                self.initial["seen"] = version(instance, parts=self.parts)

    def changed(self) -> dict:
        """The values that differ from the row's, and the version that was seen."""
        changed = {name: self.cleaned_data[name] for name in self.changed_data if name != "seen"}
        return {**changed, "seen": self.cleaned_data["seen"]} if "seen" in self.fields else changed

    def _post_clean(self):
        # Django would ask the database for every constraint and tell it at the head of the form, without the value.
        # Here each impossible number is told at its field; what spans fields or rows is told by the operation.
        self.instance = construct_instance(self, self.instance, self._meta.fields)
        try:
            self.instance.clean_fields(exclude=self._get_validation_exclusions())
        except ValidationError as error:
            self._update_errors(error)
        for name, message in impossible(self.instance):
            if name in self.fields and name not in self.errors:
                self.add_error(name, message)

    def add_error(self, field, error):
        if field == "seen":
            # Told once: keeping it again means it.
            self.data = self.data.copy()
            self.data[self.add_prefix("seen")] = version(self.instance, parts=self.parts)
            field = None
        super().add_error(field, error)


def _dress(field) -> None:
    """Days from a calendar, little room for few words, and choices that say in our words that nothing is chosen."""
    if isinstance(field, forms.DateField):
        field.widget = DayInput()
    elif isinstance(field, forms.NullBooleanField):
        field.widget.choices = (("unknown", "not noted"), ("true", "yes"), ("false", "no"))
    elif isinstance(field, forms.TypedChoiceField):
        field.choices = [(value, label if value else "–") for value, label in field.choices]
    elif isinstance(field.widget, forms.Textarea):
        field.widget.attrs["rows"] = 3
