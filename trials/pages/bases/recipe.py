"""The recipe as it is typed: for each component its own figures, and its lines unless it is a black box."""

from trials.models import RawMaterial, Revision
from trials.models.bases import Kind
from trials.operations.bases import ComponentEntry, LineEntry, entries

from .forms import LETTERS, ComponentForm, LineFormSet

FIGURES = ("name", "parts", "density_g_ml", "viscosity_mpa_s", "non_volatile_pct", "water_pct", "batch", "received")


class Block:
    """One component on the page: its form and, for a recipe, its lines."""

    def __init__(self, letter, data, standing: ComponentEntry | None, materials, *, black_box: bool):
        self.letter = letter
        start = {name: getattr(standing, name) for name in FIGURES} if standing else None
        self.form = ComponentForm(data, prefix=letter, initial=start)
        self.lines = None
        if not black_box:
            self.lines = LineFormSet(
                data,
                prefix=f"{letter}-lines",
                initial=[_typed(line) for line in standing.lines] if standing else None,
                form_kwargs={"materials": materials},
            )

    @property
    def empty(self) -> bool:
        """Nothing typed at all: there is no such component."""
        given = any(self.form.cleaned_data.get(name) not in (None, "") for name in FIGURES)
        return not given and not self._line_entries()

    def is_valid(self) -> bool:
        valid = self.form.is_valid()
        if self.lines is not None:
            valid = self.lines.is_valid() and valid
        if valid and self._line_entries() and self.form.cleaned_data["parts"] is None:
            self.form.add_error("parts", "Say how many parts by mass of this component are mixed.")
            return False
        return valid

    def entry(self) -> ComponentEntry:
        figures = {name: self.form.cleaned_data[name] for name in FIGURES}
        return ComponentEntry(letter=self.letter, lines=self._line_entries(), **figures)

    def problems(self):
        """Every error of the block with the id of its input, the component named."""
        yield from _errors(self.form, f"Component {self.letter}, ")
        for number, line in enumerate(self.lines.forms if self.lines else (), 1):
            yield from _errors(line, f"Component {self.letter}, row {number}, ")
        for error in self.lines.non_form_errors() if self.lines else ():
            yield f"Component {self.letter}: {error}", ""

    def _line_entries(self) -> tuple[LineEntry, ...]:
        rows = (
            [form.cleaned_data for form in self.lines.forms if form.has_changed() or form.initial]
            if self.lines
            else []
        )
        return tuple(
            LineEntry(row["material"], row["parts"], row["stage"], row["lot"]) for row in rows if row.get("material")
        )


class RecipeForm:
    """All components of one revision."""

    def __init__(self, data, revision: Revision):
        black_box = revision.base.kind == Kind.BLACK_BOX
        self.materials = list(RawMaterial.objects.order_by("code", "pk").prefetch_related("lots"))
        by_code = {material.code.casefold(): material for material in self.materials}
        standing = {entry.letter: entry for entry in entries(revision)}
        self.blocks = [Block(letter, data, standing.get(letter), by_code, black_box=black_box) for letter in LETTERS]
        self.refusal = ""

    def is_valid(self) -> bool:
        checked = [block.is_valid() for block in self.blocks]  # every block, so that all errors show at once
        return all(checked)

    def components(self) -> tuple[ComponentEntry, ...]:
        return tuple(block.entry() for block in self.blocks if not block.empty)

    def problems(self) -> list[tuple[str, str]]:
        found = [(self.refusal, "")] if self.refusal else []
        return found + [problem for block in self.blocks for problem in block.problems()]


def _typed(line: LineEntry) -> dict:
    return {
        "material": line.material.code,
        "parts": line.parts,
        "stage": line.stage,
        "lot": line.lot.number if line.lot else "",
    }


def _errors(form, where: str):
    for name, errors in form.errors.items():
        field = form[name] if name != "__all__" else None
        for error in errors:
            yield f"{where}{field.label + ': ' if field else ''}{error}", field.id_for_label if field else ""
