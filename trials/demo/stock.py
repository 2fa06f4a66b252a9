"""Raw materials, lots, papers and candidates, each entered by the person whom its row names."""

from trials.operations.candidates import add_candidate
from trials.operations.equivalents import GroupEntry
from trials.operations.materials import add_lot, add_material, add_paper, change_lot, change_material

from .candidates import CANDIDATES
from .laboratory import Laboratory, number
from .lots import HANDLING, LOTS
from .materials import CORRECTIONS, MATERIALS
from .papers import PAPERS


def stock_the_shelf(laboratory: Laboratory) -> str:
    for row in MATERIALS:
        _add_material(laboratory, row)
    for row in CANDIDATES:
        _add_material(laboratory, row.material)
        _add_candidate(laboratory, row)
    for row in LOTS:
        _add_lot(laboratory, row)
    for row in HANDLING:
        _note_handling(laboratory, row)
    for row in CORRECTIONS:
        _correct(laboratory, row)
    for row in PAPERS:
        _file_paper(laboratory, row)
    return (
        f"{len(MATERIALS)} raw materials and {len(CANDIDATES)} candidates with {len(LOTS)} lots"
        f" and {len(PAPERS)} papers"
    )


def _add_material(laboratory, row) -> None:
    laboratory.materials[row.code] = add_material(
        actor=laboratory.people[row.by],
        code=row.code,
        name=row.name,
        supplier=row.supplier,
        function=row.function,
        density_g_ml=number(row.density),
        non_volatile_pct=number(row.non_volatile),
        voc_pct=number(row.voc),
        active_pct=number(row.active),
        diisocyanate_pct=number(row.diisocyanate),
        price_per_kg=number(row.price),
        hazards=row.hazards.split(),
        sheet_issued=laboratory.days.workday(row.sheet),
        remarks=row.remarks,
        withdrawn=row.withdrawn,
        groups=[
            GroupEntry(group.group, group.entered_as, number(group.entered), number(group.hydrogens))
            for group in row.groups
        ],
    )


def _add_candidate(laboratory, row) -> None:
    code = row.material.code
    carrier, carrier_pct = row.carrier
    strength, macro_foam, air_release = row.grades
    tip_speed, minutes = row.shear
    low, high, highest_tried = row.window
    laboratory.candidates[code] = add_candidate(
        actor=laboratory.people[row.material.by],
        material=laboratory.materials[code],
        chemistry=row.chemistry,
        carrier=carrier,
        carrier_pct=number(carrier_pct),
        silicone=row.silicone,
        strength=strength,
        macro_foam=macro_foam,
        air_release=air_release,
        tip_speed_m_s=number(tip_speed),
        minutes=number(minutes),
        from_pct=number(low),
        to_pct=number(high),
        highest_tried_pct=number(highest_tried),
        stages=list(row.stages),
        diluted_in=row.diluted_in,
        cautions=row.cautions,
    )


def _add_lot(laboratory, row) -> None:
    days, (certificate_as, certificate_value) = laboratory.days, row.certificate or ("", None)
    laboratory.lots[row.code, row.number] = add_lot(
        actor=laboratory.people[row.by],
        material=laboratory.materials[row.code],
        number=row.number,
        received=days.workday(row.received),
        expires=None if row.expires is None else days.day(row.expires),
        certificate_as=certificate_as,
        certificate_value=number(certificate_value),
        density_g_ml=number(row.density),
        non_volatile_pct=number(row.non_volatile),
        water_pct=number(row.water),
        on_hand_kg=number(row.on_hand),
    )


def _note_handling(laboratory, row) -> None:
    key = (row.code, row.number)
    laboratory.lots[key] = change_lot(
        actor=laboratory.people[row.by],
        lot=laboratory.lots[key],
        opened=laboratory.days.workday(row.opened),
        appearance=row.appearance,
        shaken=row.shaken,
        warmed=row.warmed,
    )


def _correct(laboratory, row) -> None:
    values = {
        "hazards": row.hazards and row.hazards.split(),
        "sheet_issued": row.sheet and laboratory.days.workday(row.sheet),
        "price_per_kg": number(row.price),
    }
    laboratory.materials[row.code] = change_material(
        actor=laboratory.people[row.by],
        material=laboratory.materials[row.code],
        **{name: value for name, value in values.items() if value is not None},
    )


def _file_paper(laboratory, row) -> None:
    days = laboratory.days
    add_paper(
        actor=laboratory.people[row.by],
        material=laboratory.materials[row.code],
        subject=row.subject,
        title=row.title,
        region=row.region,
        issued=days.workday(row.issued),
        expires=None if row.expires is None else days.day(row.expires),
        says=row.says,
    )
