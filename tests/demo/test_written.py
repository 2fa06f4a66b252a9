"""What was worked out is what the record holds, for a few series that hold a bit of everything."""

from datetime import timedelta
from io import BytesIO

import numpy as np
import pytest
from django.core.files.storage import default_storage
from PIL import Image
from scipy import ndimage

from tests.demo.conftest import FEW, UNTIL
from tests.demo.recovered import ROWS
from trials.access import enquiries, series
from trials.demo.bubbles_drawn import HEIGHT_PX, WIDTH_PX, bubbles_of
from trials.demo.imagined import imagine
from trials.demo.photographing import photographed, picture_of
from trials.demo.readers import readings
from trials.demo.rendering import draw_bubbles
from trials.demo.telling import tell
from trials.models import Enquiry, Photo, Rating, Retain, Signature, StoredTin, Trial, WetReading
from trials.models.signing import Meaning
from trials.models.trials import State
from trials.queries.judging import judgement
from trials.queries.proof import doubts
from trials.queries.weighed import weighed_cups

pytestmark = pytest.mark.django_db


def test_every_series_has_its_references_and_follows_the_one_before(laboratory):
    assert set(laboratory.worked) == set(FEW)
    for key, worked in laboratory.worked.items():
        row = ROWS[key]
        parts = list(worked.series.trials.values_list("part", flat=True))
        assert parts.count("blank") == row.blanks >= 2
        assert parts.count("clean check") == 1
        assert len(parts) == len(imagine(row))
    assert laboratory.worked["ef-23"].series.follows == laboratory.worked["ef-22"].series


def test_ratings_are_those_that_the_readers_made(laboratory):
    worked = laboratory.worked["ef-4"]
    for cup in imagine(ROWS["ef-4"]):
        for panel in cup.panels:
            kept = Rating.objects.filter(panel=worked.panels[*cup.key, panel.kind])
            found = {
                (
                    one.criterion.key,
                    one.person.sign_in_name,
                    str(one.age_h),
                    None if one.value is None else str(one.value),
                    one.word,
                )
                for one in kept.select_related("criterion", "person")
            }
            assert found == {
                (one.criterion, one.reader, one.age_h, one.value, one.word) for one in readings(cup, panel)
            }


def test_what_was_weighed_is_what_was_planned_but_for_mishaps(laboratory):
    checked = 0
    for key, worked in laboratory.worked.items():
        trials = list(worked.series.trials.order_by("pk"))
        weighed = weighed_cups(trials)
        for cup in imagine(ROWS[key]):
            trial = worked.trials[cup.key]
            for dose in weighed[trial.pk].doses if trial.pk in weighed and cup.mishap != "spilled" else ():
                if dose.off_pct is not None:
                    assert dose.off_pct == pytest.approx(100 * (cup.weighed - 1), abs=1.0)
                    checked += 1
    assert checked > 40


def test_outcomes_lessons_and_failures_stand_at_their_cups(laboratory):
    worked = laboratory.worked["ef-4"]
    for key, told in tell(ROWS["ef-4"]).items():
        trial = Trial.objects.get(pk=worked.trials[key].pk)
        assert (trial.outcome, trial.lesson, trial.unfair_because) == (told.outcome, told.lesson, told.unfair_because)
        assert trial.state == State.CLOSED
        assert [(one.mode, one.how) for one in trial.failures.all()] == [(one.mode, one.how) for one in told.failures]
    assert set(worked.series.trials.filter(part="blank").values_list("outcome", flat=True)) == {""}


def test_wet_readings_are_figures_or_words(laboratory):
    assert WetReading.objects.filter(quantity="density", where="A").count() > 100
    assert WetReading.objects.filter(value=None, word="not before it set").exists()


def test_tins_were_opened_after_a_fortnight_and_a_month(laboratory):
    tins = StoredTin.objects.filter(trial__series=laboratory.worked["ef-4"].series)
    assert {tin.days for tin in tins} == {14, 28}
    assert all(tin.opened_at - tin.stored_at < timedelta(days=tin.days) for tin in tins)
    assert all(tin.appearance and tin.panels.exists() for tin in tins)
    rings = tins.filter(appearance__contains="oil")
    assert {dose.candidate.material.code for tin in rings for dose in tin.trial.dosages.all()} == {"AR-04"}


def test_what_is_signed_can_be_proved(laboratory):
    assert Signature.objects.count() >= 8
    assert list(doubts()) == []


def test_old_series_are_countersigned_by_another(laboratory):
    for key in ("ef-1", "ef-4", "ef-19", "em-1"):
        performed, countersigned = laboratory.worked[key].series.signatures.order_by("pk")[:2]
        assert (performed.meaning, countersigned.meaning) == (Meaning.PERFORMED, Meaning.COUNTERSIGNED)
        assert performed.person != countersigned.person
        assert performed.at < countersigned.at
    assert not laboratory.worked["ef-22"].series.signatures.exists()


def test_a_value_a_month_later_is_an_amendment_with_its_reason(laboratory):
    signed = laboratory.worked["ef-19"].series.signatures
    amendment = signed.get(meaning=Meaning.AMENDED)
    assert "28 d" in amendment.reason
    later = Rating.objects.filter(panel__trial__series=laboratory.worked["ef-19"].series, age_h=672)
    assert later.exists()
    assert {one.criterion.key for one in later} == {"hardness"}
    assert "672" not in signed.get(meaning=Meaning.PERFORMED).canonical


def test_the_newest_is_planned_and_the_one_before_waits_for_its_conclusion(laboratory):
    planned, waiting = laboratory.worked["ef-23"].series, laboratory.worked["ef-22"].series
    assert set(planned.trials.values_list("state", flat=True)) == {State.PLANNED}
    assert (waiting.outcome, set(waiting.trials.values_list("outcome", flat=True))) == ("", {""})
    assert set(waiting.trials.values_list("state", flat=True)) <= {State.READ, State.MIXED}


def test_nothing_is_read_before_it_can_be(laboratory):
    assert not Rating.objects.filter(at__date__gt=UNTIL).exists()
    for rating in Rating.objects.filter(panel__stored_tin=None).select_related("panel")[:500]:
        assert rating.at - rating.panel.applied_at == timedelta(hours=float(rating.age_h))


def test_restricted_series_and_enquiries_are_seen_by_named_people_only(laboratory):
    closed = laboratory.worked["em-1"].series
    seen_by = {name for name, person in laboratory.people.items() if series(person).filter(pk=closed.pk).exists()}
    assert seen_by == {"caspar", "tibor", "ruth"}
    assert Enquiry.objects.count() == 20
    assert enquiries(laboratory.people["jonna"]).count() == 18


def test_blank_and_best_are_kept(laboratory):
    boxes = Retain.objects.filter(trial__series=laboratory.worked["ef-1"].series)
    assert {box.place.split(",")[0] for box in boxes} == {"panel store", "cold store"}


def test_a_series_can_be_judged(laboratory):
    found = judgement(laboratory.worked["ef-19"].series.pk, laboratory.people["maren"])
    assert {"AR-09", "AR-14"} <= {window.name for window in found.windows}
    blind = [mark.text for mark in found.marks if "blind" in mark.text or "one reader" in mark.text]
    assert blind == []


def test_photographs_show_what_was_counted(laboratory):
    """One square decimetre, with as many bubbles as the first reader wrote down."""
    shown = 0
    for key in ("ef-1", "ef-4", "ef-22"):
        worked = laboratory.worked[key]
        for cup, panel, _ in photographed(ROWS[key]):
            photo = Photo.objects.get(panel=worked.panels[*cup.key, panel.kind])
            counted = Rating.objects.get(
                panel=photo.panel, criterion__key="bubble-count", person=photo.person, age_h=photo.age_h
            )
            assert len(bubbles_of(cup, panel).diameter_mm) == counted.value
            assert photo.width_px * photo.height_px * float(photo.mm_per_px) ** 2 == pytest.approx(100 * 100)
            assert default_storage.exists(photo.original)
            assert default_storage.exists(photo.picture)
            shown += 1
    assert shown > 15
    assert Photo.objects.count() == shown


@pytest.mark.parametrize(("key", "part"), [("ef-1", "blank"), ("pf-2", "blank"), ("ef-6", "treated")])
def test_each_bubble_is_drawn_and_none_hides_another(key, part):
    cup = next(cup for cup in imagine(ROWS[key]) if cup.part == part and cup.panels)
    shade = np.ones((HEIGHT_PX, WIDTH_PX), dtype=np.float32)
    draw_bubbles(shade, bubbles_of(cup, cup.panel()))
    _, found = ndimage.label(np.abs(shade - 1) > 0.10, structure=np.ones((3, 3)))
    assert found == cup.panel().seen.count > 0


def test_photographs_are_small_files_of_a_megapixel():
    cup = imagine(ROWS["uf-7"])[0]
    content = picture_of(cup, cup.panel())
    assert len(content) < 400_000
    with Image.open(BytesIO(content)) as image:
        assert (image.format, image.width * image.height) == ("JPEG", 1_000_000)
