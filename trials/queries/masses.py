"""What goes into one cup: grams of each component, the mass that a dosage refers to, grams of additive."""

from dataclasses import dataclass
from decimal import Decimal

from trials.models.series import Basis, Supplied
from trials.science import dosage
from trials.science.dosage import ComponentMass

from .recipes import ComponentFigures


@dataclass(frozen=True, slots=True)
class Reckoning:
    """How the per cent of a dosage are meant."""

    basis: str
    basis_component: str
    counting: str
    supplied: str

    @classmethod
    def of(cls, record) -> "Reckoning":
        """As a series or a dosage says."""
        return cls(record.basis, record.basis_component, record.counting, record.supplied)

    def __str__(self):
        basis = f"component {self.basis_component}" if self.basis == Basis.COMPONENT else str(self.basis)
        return f"on {basis}, {self.counting}, {self.supplied}"


def shares(components: tuple[ComponentFigures, ...]) -> dict[str, float]:
    """Share of each component in the mix, by its mixing parts."""
    total = sum(component.parts for component in components)
    return {component.letter: component.parts / total for component in components}


def cup_masses(components: tuple[ComponentFigures, ...], batch_mass_g) -> dict[str, ComponentMass]:
    """The components of so many grams of mix, free of additive, at the ratio as sold."""
    part = shares(components)
    return {
        component.letter: component.mass(float(batch_mass_g) * part[component.letter]) for component in components
    }


def basis_mass_g(reckoning: Reckoning, masses: dict[str, ComponentMass]) -> float:
    """Grams that the per cent refer to.

    Raises
    ------
    ValueError
        Where binder solids are not known, naming the component, or the component is not in the base.
    """
    if reckoning.basis == Basis.SOLIDS:
        for letter, mass in masses.items():
            if mass.binder_solids_g is None:
                raise ValueError(
                    f"Component {letter} has no known recipe with non-volatile contents, so its binder solids are"
                    f" not known: dose on the total or on a component. Got “{reckoning.basis}”."
                )
    if reckoning.basis == Basis.COMPONENT and reckoning.basis_component not in masses:
        raise ValueError(
            f"The base has the components {', '.join(sorted(masses))}; got “{reckoning.basis_component}”."
        )
    return dosage.basis_g(reckoning.basis, masses, reckoning.basis_component or None)


def active_pct(reckoning: Reckoning, material) -> float:
    """Active matter that the per cent count: all of the additive where they are of the additive as supplied.

    Raises
    ------
    ValueError
        Where the dosage is of active matter and the material's is not known.
    """
    if reckoning.supplied == Supplied.SUPPLIED:
        return 100.0
    if not material.active_pct:
        raise ValueError(
            f"The active content of {material.code} is not known: enter it, or dose as supplied. Got “active”."
        )
    return float(material.active_pct)


def additive_g(dosage_pct, reckoning: Reckoning, masses: dict[str, ComponentMass], material) -> float:
    """Grams of additive, as supplied."""
    return dosage.additive_g(
        float(dosage_pct),
        basis_mass_g(reckoning, masses),
        counting=reckoning.counting,
        active_pct=active_pct(reckoning, material),
    )


def as_grams(value: float) -> Decimal:
    """A computed mass as the record keeps it: to the microgram, without the tail of a binary fraction."""
    return Decimal(repr(round(value, 6)))
