"""What was done to cups, as a table."""

from collections.abc import Sequence

from .parts import Row, Table, columns, number, words

HEADS = columns(
    "Working", "Equipment", ("Blade", "mm"), ("Vessel", "mm"), ("Speed", "1/min"), ("Tip speed", "m/s"),
    ("Time", "min"), ("Temperature", "°C"), ("Vacuum", "mbar"), "Remark",
)  # fmt: skip


def working_table(rows: Sequence, caption: str = "What every cup gets, the blanks too") -> Table | None:
    """``rows`` have a working with its equipment fetched, its tip speed, and remarks perhaps."""
    if not rows:
        return None
    made = []
    for row in rows:
        one = row.working
        made.append(
            Row(
                (
                    words(one.get_kind_display()),
                    words(one.equipment.name if one.equipment else ""),
                    number(one.blade_mm, 0),
                    number(one.vessel_mm, 0),
                    number(one.rpm, 0),
                    number(row.tip_speed_m_s, 1),
                    number(one.minutes, 1),
                    number(one.temperature_c, 1),
                    number(one.vacuum_mbar, 0),
                    words(one.remark, *getattr(row, "remarks", ())),
                )
            )
        )
    used = [place for place in range(len(HEADS)) if any(row.cells[place].text != "–" for row in made)]
    return Table(
        caption,
        tuple(HEADS[place] for place in used),
        tuple(Row(tuple(row.cells[place] for place in used)) for row in made),
    )
