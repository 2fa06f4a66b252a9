"""The criteria a new notebook starts with: own wording, standards named, all editable afterwards.

Grades run from 0 (none) to 5 (severe), after the direction of ISO 4628-1; the steps' words are ours, common practice.
"""

from decimal import Decimal

from django.db import migrations

GRADES = ("none", "traces, seen only at an angle", "few", "clearly there", "many", "severe, all over")
GRADED = (
    # key, name, concern, standard, how
    ("bubbles", "Bubbles", "efficiency", "ISO 4628-1 for the grades", "Bubbles in and on the cured film, by eye at 30 cm."),
    ("micro-foam", "Micro-foam", "efficiency", "common practice", "Many small bubbles inside; opaque films: sanded or sawn, then looked at."),
    ("pinholes", "Pinholes", "efficiency", "ISO 28199-1 for the term", "Small holes as from a pin, by eye and with a finger nail."),
    ("craters", "Craters", "compatibility", "ISO 4618 for the term", "Round hollows that stay after cure."),
    ("fish-eyes", "Fish-eyes", "compatibility", "ISO 4618 for the term", "Craters with a speck in their centre."),
    ("crawling", "Crawling of the second coat", "compatibility", "ISO 4618 for the term", "The wet second coat draws back from the first."),
    ("levelling", "Levelling", "compatibility", "common practice", "0 flat, 5 stands as it was spread."),
    ("floating", "Floating", "compatibility", "ISO 4618 for the term", "Streaks or cells of colour."),
    ("haze", "Haze by eye", "compatibility", "common practice", "Against the blank, over black for clear films."),
    ("bleeding", "Bleeding", "compatibility", "common practice", "A greasy film that smears and comes back after wiping."),
    ("blush", "Amine blush", "compatibility", "common practice", "White, sticky, washes off with warm water."),
    ("tack", "Tack", "compatibility", "common practice", "0 dry, 5 sticks to the finger."),
    ("yellowing", "Yellowing", "compatibility", "common practice", "Against the blank of the same age."),
)  # fmt: skip
QUANTITIES = (
    # key, name, unit, low, high, better, concern, standard, how
    ("bubble-count", "Bubbles counted", "per dm²", 0, 5000, "lower", "efficiency", "common practice", "Counted from 0.2 mm, per area."),
    ("haze-reflection", "Haze by reflection", "HU", 0, 1000, "lower", "compatibility", "ISO 13803", "20° optics; high gloss, plane, opaque films only."),
    ("haze-transmission", "Haze by transmission", "%", 0, 100, "lower", "compatibility", "ASTM D1003, ISO 14782", "Free clear film."),
    ("gloss", "Gloss", "GU at 60°", 0, 200, "higher", "compatibility", "ISO 2813", "60° first; 20° above 70 units, 85° below 10."),
    ("hardness", "Hardness", "Shore D", 0, 100, "higher", "compatibility", "ISO 868", "Mean of five readings."),
    ("adhesion", "Pull-off strength", "N/mm²", 0, 50, "higher", "compatibility", "ISO 4624", "With the plane of failure in the remark."),
)  # fmt: skip


def make(apps, editor):
    criterion, step = apps.get_model("trials", "Criterion"), apps.get_model("trials", "Step")
    position = 0
    for key, name, concern, standard, how in GRADED:
        position += 10
        made = criterion.objects.create(
            key=key, name=name, position=position, scale="steps", low=Decimal(0), high=Decimal(5),
            better="lower", concern=concern, standard=standard, how=how,
        )  # fmt: skip
        step.objects.bulk_create(
            step(criterion=made, value=Decimal(value), says=says) for value, says in enumerate(GRADES)
        )
    for key, name, unit, low, high, better, concern, standard, how in QUANTITIES:
        position += 10
        criterion.objects.create(
            key=key, name=name, position=position, scale="quantity", unit=unit, low=Decimal(low),
            high=Decimal(high), better=better, concern=concern, standard=standard, how=how,
        )  # fmt: skip


class Migration(migrations.Migration):
    dependencies = [("trials", "0004_frozen")]
    operations = [migrations.RunPython(make, migrations.RunPython.noop)]
