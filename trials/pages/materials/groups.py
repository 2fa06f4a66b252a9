"""Reactive groups as a table of lines: each is an equivalent weight, or the value that it follows from."""

from django import forms
from django.core.exceptions import ValidationError

from trials.models.fields import NumberFormField
from trials.models.materials import EnteredAs, Group
from trials.operations.acting import Refused
from trials.operations.equivalents import GroupEntry, equivalent_g

from .forms import UNITS


class GroupForm(forms.Form):
    """One line; a line without group and value is no line, so that emptying one takes the group away."""

    group = forms.ChoiceField(choices=[("", "–"), *Group.choices], required=False)
    entered_as = forms.ChoiceField(label="Entered as", choices=EnteredAs.choices, required=False)
    entered = NumberFormField(label="Value", required=False)
    hydrogens_per_nitrogen = NumberFormField(
        label="Hydrogens per N", required=False, help_text="2 for a primary amine, 1 for an aspartate"
    )

    def __init__(self, *args, **kwargs):
        super().__init__(*args, **kwargs)
        if self.is_bound:
            self.fields["entered"].unit = UNITS.get(self.data.get(self.add_prefix("entered_as")), "")

    def clean(self):
        typed = super().clean()
        if self.errors or not (typed.get("group") or typed.get("entered") is not None):
            return typed
        if not typed.get("group"):
            self.add_error("group", f"Choose the group that {typed['entered']} is the value of.")
        elif typed.get("entered") is None:
            self.add_error("entered", f"Enter the value for {typed['group']}, or choose no group.")
        else:
            self._reckon(self.entry())
        return typed

    def entry(self) -> GroupEntry:
        typed = self.cleaned_data
        return GroupEntry(
            group=typed["group"],
            entered_as=typed["entered_as"] or EnteredAs.EQUIVALENT,
            entered=typed["entered"],
            hydrogens_per_nitrogen=typed["hydrogens_per_nitrogen"],
        )

    def _reckon(self, entry: GroupEntry) -> None:
        try:
            equivalent_g(entry)
        except Refused as refusal:
            self.add_error(refusal.field, refusal.message)


class GroupLines(forms.BaseFormSet):
    def entries(self) -> list[GroupEntry]:
        return [row.entry() for row in self.forms if row.cleaned_data.get("group")]

    def clean(self):
        rows: dict[str, list[str]] = {}
        for number, row in enumerate(self.forms, 1):
            group = getattr(row, "cleaned_data", {}).get("group")
            if group:
                rows.setdefault(group, []).append(str(number))
        twice = [f"{group} stands in rows {' and '.join(where)}" for group, where in rows.items() if len(where) > 1]
        if twice:
            raise ValidationError(f"A group stands once in a material: {'; '.join(twice)}.")


_lines = forms.formset_factory(GroupForm, formset=GroupLines, extra=2)


def group_lines(data, material=None) -> GroupLines:
    """The lines as posted, or as they stand."""
    standing = material.groups.order_by("pk") if material else ()
    names = ("group", "entered_as", "entered", "hydrogens_per_nitrogen")
    initial = [{name: getattr(group, name) for name in names} for group in standing]
    return _lines(data, initial=initial, prefix="groups")
