"""Writing about single cups of a series: one more in the middle of the work, or one fewer."""

from datetime import datetime
from decimal import Decimal

from django.db.models import F, Max

from trials.models import Candidate, Dosage, Lot, Person, Series, Trial, Working
from trials.models.trials import Part, State
from trials.queries.masses import Reckoning, cup_masses

from .acting import Refused, operation
from .layout import planned_g
from .series import figures, refuse_signed

WORKED = ("kind", "equipment_id", "blade_mm", "vessel_mm", "rpm", "minutes", "temperature_c", "vacuum_mbar", "remark")


@operation()
def add_cup(
    *,
    actor: Person,
    now: datetime,
    series: Series,
    like: Trial,
    dosage_pct: Decimal | None = None,
    candidate: Candidate | None = None,
    lot: Lot | None = None,
    batch_mass_g: Decimal | None = None,
    topped_up: bool = False,
) -> Trial:
    """One more cup: the same as ``like`` in everything that is not given, before the clean check if that waits.

    Topped up: made from the cup ``like`` itself by adding more; its grams planned are all that it then holds.
    """
    series = Series.objects.select_for_update().get(pk=series.pk)
    refuse_signed(series)
    doses = list(like.dosages.order_by("pk").select_related("candidate__material"))
    _check(series, like, doses, dosage_pct, candidate, topped_up)
    last = series.trials.aggregate(number=Max("number"), position=Max("position"))
    trial = Trial(
        series=series,
        number=last["number"] + 1,
        code=f"{series.number}-{last['number'] + 1}",
        position=_make_room(series, last["position"]),
        part=Part.TREATED if candidate and not doses else like.part,
        common_batch_id=like.common_batch_id,
        batch_mass_g=batch_mass_g or like.batch_mass_g or series.batch_mass_g,
        topped_up_from=like if topped_up else None,
    )
    if trial.batch_mass_g <= 0:
        raise Refused(f"Mix of a cup must be above 0 g; got {trial.batch_mass_g}.", field="batch_mass_g")
    trial.save()
    _dose(trial, _doses(series, doses, dosage_pct, candidate, lot))
    Working.objects.bulk_create(
        Working(trial=trial, position=place, **{name: getattr(done, name) for name in WORKED})
        for place, done in enumerate(like.workings.order_by("position", "pk"), 1)
    )
    return trial


@operation()
def remove_cup(*, actor: Person, trial: Trial) -> None:
    """Take a planned cup out again; one from which anything was noted stays."""
    trial = Trial.objects.select_for_update().get(pk=trial.pk)
    refuse_signed(trial.series)
    noted = trial.state != State.PLANNED or trial.made_at or any(
        getattr(trial, part).exists() for part in ("weighings", "wet_readings", "panels", "failures", "stored_tins")
    )  # fmt: skip
    if noted or trial.top_ups.exists():
        raise Refused(f"Cup {trial.code} is no longer only planned: it stays, with the word for what happened.")
    trial.delete()


def _check(series, like, doses, dosage_pct, candidate, topped_up) -> None:
    if like.series_id != series.pk:
        raise Refused(f"Cup {like.code} is of another series.", field="like")
    if dosage_pct is not None and dosage_pct < 0:
        raise Refused(f"A dosage must not be below 0; got {dosage_pct} %.", field="dosage_pct")
    if not doses and not candidate and dosage_pct:
        raise Refused(f"Cup {like.code} is without additive: choose one for {dosage_pct} %.", field="candidate")
    if candidate and dosage_pct is None:
        raise Refused(f"Give the dosage of {candidate.material.code}.", field="dosage_pct")
    if topped_up and doses and not candidate and (dosage_pct is None or dosage_pct <= doses[0].dosage_pct):
        raise Refused(
            f"Cup {like.code} holds {doses[0].dosage_pct} % already: a topped-up cup gets more; got {dosage_pct} %.",
            field="dosage_pct",
        )


def _make_room(series: Series, last: int) -> int:
    """The place of the new cup: before clean checks that are only planned, since those prove the end."""
    waiting = series.trials.filter(part=Part.CLEAN, state=State.PLANNED).order_by("position", "pk")
    first = waiting.first()
    if first is None:
        return last + 1
    series.trials.filter(position__gte=first.position).update(position=F("position") + 1)
    return first.position


def _doses(series, doses: list[Dosage], dosage_pct, candidate, lot) -> list[Dosage]:
    """Copies of the dosages of the cup before, the first of them changed as asked."""
    if not doses and candidate:
        doses = [_as_the_series(series, candidate)]
    for place, dose in enumerate(doses):
        dose.pk, dose._state.adding, dose.weighed_g = None, True, None
        if place == 0:
            if candidate and candidate != dose.candidate:
                dose.candidate, dose.lot = candidate, None
            dose.lot = lot or dose.lot
            dose.dosage_pct = dose.dosage_pct if dosage_pct is None else dosage_pct
            if dose.lot and dose.lot.material_id != dose.candidate.material_id:
                raise Refused(f"Lot {dose.lot.number} is not a lot of {dose.candidate.material.code}.", field="lot")
    return doses


def _as_the_series(series: Series, candidate: Candidate) -> Dosage:
    names = ("basis", "basis_component", "counting", "supplied", "stage", "into")
    return Dosage(candidate=candidate, **{name: getattr(series, name) for name in names})


def _dose(trial: Trial, doses: list[Dosage]) -> None:
    if not doses:
        return
    masses = cup_masses(figures(trial.series), trial.batch_mass_g)
    for dose in doses:
        dose.trial = trial
        dose.planned_g = planned_g(dose.dosage_pct, Reckoning.of(dose), masses, dose.candidate)
    Dosage.objects.bulk_create(doses)
