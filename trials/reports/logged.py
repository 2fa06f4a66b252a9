"""What was logged of one cup, as tables: weighed, read wet, applied, stored, rated."""

from trials.queries.trials import TrialSheet

from .parts import Cell, Row, Table, columns, joined, moment, number, sentence, words, written


def dosage_table(sheet: TrialSheet) -> Table:
    rows = []
    for dose in sheet.weighed.doses:
        row = dose.dosage
        rows.append(
            Row(
                (
                    words(row.candidate.material.code),
                    words(row.lot.number if row.lot else ""),
                    Cell(written(row.dosage_pct), float(row.dosage_pct), 3),
                    number(dose.real_pct, 3),
                    number(row.planned_g, 3),
                    number(dose.weighed_g, 3),
                    words(f"{dose.reckoning}, into {row.into} at {row.get_stage_display()}", sentence(dose.why_not)),
                )
            )
        )
    heads = columns(
        "Additive", "Lot", ("Dosage", "% decided"), ("Dosage", "% as weighed"), ("Planned", "g"), ("Weighed", "g"),
        "Counted",
    )  # fmt: skip
    return Table("Additive, decided and weighed", heads, tuple(rows))


def component_table(sheet: TrialSheet) -> Table:
    rows = (
        Row((words(one.letter), number(one.planned_g, 2), number(one.weighed_g, 2), words(one.source)))
        for one in sheet.weighed.portions
    )
    heads = columns("Component", ("Planned", "g"), ("Weighed", "g"), "Dosage counted on")
    return Table("Components", heads, tuple(rows))


def reading_table(sheet: TrialSheet) -> Table:
    rows = (
        Row(
            (
                words(row.what),
                Cell(written(row.weighing.reading_g), _float(row.weighing.reading_g), 3)
                if row.weighing.reading_g is not None
                else words(row.weighing.word),
                number(row.grams, 3),
                words("goes on from the one before" if row.weighing.cumulative else "set to zero before"),
                words(row.weighing.balance.name if row.weighing.balance else ""),
                words(moment(row.weighing.at)),
            )
        )
        for row in sheet.readings
    )
    heads = columns("Weighed", ("Reading", "g"), ("Amounts to", "g"), "Balance was", "Balance", "When")
    return Table("Balance readings, as they stood on the display", heads, tuple(rows))


def wet_table(sheet: TrialSheet) -> Table:
    rows, sources = [], []
    for row in sheet.wet:
        reading = row.reading
        if row.free:
            sources.append(f"Air of {reading.get_where_display()} against {row.free.density_g_ml:.4g} g/mL,")
            sources[-1] += f" {row.free.source}."
        value = number(reading.value, 3) if reading.value is not None else words(reading.word)
        rows.append(
            Row(
                (
                    words(f"{reading.get_quantity_display()}"),
                    words(reading.get_where_display()),
                    value,
                    number(reading.minutes, 0),
                    number(row.air_pct, 2),
                    words(joined((reading.method, sentence(row.problem)), ". ")),
                )
            )
        )
    heads = columns("Read", "On", ("Value", ""), ("After", "min"), ("Air", "% by volume"), "How")
    return Table("Read before cure", heads, tuple(rows), tuple(dict.fromkeys(sources)))


def panel_table(sheet: TrialSheet) -> Table:
    rows = (
        Row(
            (
                words(row.panel.code),
                words(f"{row.panel.get_substrate_display()}: {row.build_up}", row.panel.remark),
                words(row.storage),
                number(row.panel.area_dm2, 2),
                words(moment(row.panel.applied_at)),
                number(row.margin_c, 1),
            )
        )
        for row in sheet.panels
    )
    heads = columns("Panel", "Built up", "Material", ("Area", "dm²"), "Applied", ("Above dew point", "°C"))
    return Table("Panels", heads, tuple(rows))


def tin_table(sheet: TrialSheet) -> Table:
    rows = (
        Row(
            (
                number(tin.temperature_c, 0),
                number(float(tin.days), 0),
                words(moment(tin.opened_at)),
                words(tin.appearance),
            )
        )
        for tin in sheet.tins
    )
    heads = columns(("Stored at", "°C"), ("For", "d"), "Opened", "What stood in it before stirring")
    return Table("Stored tins", heads, tuple(rows))


def rated_table(sheet: TrialSheet) -> Table:
    """One row a criterion, as the cup counts in the comparison of its latest age."""
    rows = []
    for row in sheet.rated:
        for name, one in (("fresh", row.fresh), ("stored", row.stored)):
            if one:
                readers = (
                    f"{one.readers} reader{'' if one.readers == 1 else 's'}, {'blind' if one.blind else 'not blind'}"
                )
                cells = (
                    words(joined((row.name, row.unit))),
                    words(name),
                    number(one.value, 1 if one.steps else 2),
                    words("median" if one.steps else "mean"),
                    number(one.age_h, 0),
                    number(float(one.panels), 0),
                    words(readers),
                )
                rows.append(Row(cells))
    heads = columns("Criterion", "Film", ("Value", ""), "Reduced to", ("Age", "h"), ("Panels", ""), "Read by")
    return Table("What the readings of this cup amount to", heads, tuple(rows))


def rating_table(sheet: TrialSheet) -> Table:
    rows = (
        Row(
            (
                words(one.criterion.name),
                words(one.panel.code),
                number(one.age_h, 1),
                number(one.value, 2) if one.value is not None else words(one.word),
                words(one.instrument or one.person.full_name),
                words("blind" if one.blind else "knew the cup"),
            )
        )
        for one in sheet.ratings
    )
    heads = columns("Criterion", "Panel", ("Age", "h"), ("Value", ""), "Reader", "Read")
    return Table("Every reading", heads, tuple(rows))


def _float(value) -> float | None:
    return None if value is None else float(value)
