from decimal import Decimal

import pytest

from tests.making import NOW, make_epoxy_base
from tests.series_making import STIRRED, make_candidate, make_series
from trials.models import Base, Equipment, WetReading, Working
from trials.operations.enquiries import add_enquiry
from trials.operations.series import CandidateEntry, WorkingEntry
from trials.queries.series import find_series, load_series, series_sheet
from trials.queries.series_doubts import series_doubts

pytestmark = pytest.mark.django_db
HALF = Decimal("0.5")


def _said(person, series, kind=None):
    found = series_doubts(load_series(person, series.number))
    return [remark.text for remark in found if kind is None or remark.kind == kind]


def test_sound_plan_has_no_warning(bench):
    assert not [text for kind in ("wrong", "warning") for text in _said(bench, make_series(bench), kind)]


def test_blank_stirred_less_than_the_treated_cups_can_not_be_right(bench):
    series = make_series(bench)
    blank = series.trials.filter(part="blank").first()
    Working.objects.filter(trial=blank, kind="disperse").update(minutes=Decimal(1))
    (wrong,) = _said(bench, series, "wrong")
    assert wrong.startswith(f"{blank.code} (blank) is worked otherwise than the treated cups")


def test_degassed_cup_is_no_odd_one(bench):
    assert not _said(bench, make_series(bench, vacuum=True), "warning")


def test_missing_references_are_told(bench):
    enquiry = add_enquiry(actor=bench, now=NOW, subject="x", field="floor", incumbent_note="their own")
    series = make_series(
        bench, blanks=0, no_blank_because="none left", clean_check=False, enquiry=enquiry, workings=()
    )
    said = " ".join(_said(bench, series))
    for part in ("There is no blank", "No clean check", "add the incumbent", "No working is planned"):
        assert part in said


def test_too_little_shear_for_a_candidate(bench):
    """40 mm at 1500 rpm: pi * 0.040 m * 25 / s = 3.14 m/s at the tip; 5 min are planned. By hand."""
    candidate = make_candidate(tip_speed_m_s=Decimal(6), minutes=Decimal(10))
    series = make_series(bench, candidates=(CandidateEntry(candidate, (HALF,)),))
    said = _said(bench, series, "warning")
    assert "AR-01 asks for 6 m/s at the tip of the blade; planned are 3.1 m/s." in said
    assert "AR-01 asks for 10 min; dispersed are 5 min." in said


def test_window_counts_on_the_total_whatever_the_basis(bench):
    """0.12 % on A of 100 in 122 parts is 0.098 % on the total: below a window that begins at 0.1 %. By hand."""
    entry = CandidateEntry(make_candidate(), (Decimal("0.12"),))
    assert not _said(bench, make_series(bench, candidates=(entry,)), "warning")
    series = make_series(bench, candidates=(entry,), basis="component", basis_component="A")
    assert "AR-01 at 0.0984 % on the total" in _said(bench, series, "warning")[0]


def test_silicone_on_the_disc_is_told_until_it_is_cleaned(bench):
    disc = Equipment.objects.create(name="Disc 1", last_silicone=NOW)
    series = make_series(bench, workings=(*STIRRED[1:], WorkingEntry("disperse", equipment=disc)))
    assert any("Disc 1 was last used with silicone" in text for text in _said(bench, series, "warning"))
    Equipment.objects.update(last_cleaned=NOW.replace(hour=12))
    assert not _said(bench, series, "warning")


def test_silicone_and_silicone_free_in_a_plain_order(bench):
    entries = (
        CandidateEntry(make_candidate("AR-01", silicone=True), (HALF,)),
        CandidateEntry(make_candidate("AR-02"), (HALF,)),
    )
    assert any("silicone-free ones first" in text for text in _said(bench, make_series(bench, candidates=entries)))
    ordered = make_series(bench, candidates=entries, order_rule="silicone-free before silicone")
    assert not any("silicone-free ones first" in text for text in _said(bench, ordered))


def test_base_that_holds_a_defoamer_says_so(bench):
    series = make_series(bench)
    Base.objects.update(additive="may", additive_note="the customer will not say")
    assert any("may contain a defoamer already" in text for text in _said(bench, series, "note"))


def test_list_says_how_far_the_cups_are(bench):
    series = make_series(bench)
    (row,) = find_series(bench).rows
    assert (row.standing, row.signed) == ("9 cups planned", "")
    series.trials.filter(number__lte=3).update(state="mixed")
    assert find_series(bench).rows[0].standing == "3 of 9 cups mixed"
    series.trials.filter(number__lte=2).update(state="read")
    assert find_series(bench).rows[0].standing == "2 of 9 cups read"


def test_list_is_found_by_words_round_and_outcome(bench):
    make_series(bench, title="Casting", round="scout")
    make_series(bench, title="Floor")
    assert [row.series.title for row in find_series(bench, words="cast").rows] == ["Casting"]
    assert [row.series.title for row in find_series(bench, round="ladder").rows] == ["Floor"]
    assert len(find_series(bench, outcome="none").rows) == 2
    assert not find_series(bench, outcome="works").rows


def test_sheet_shows_both_dosages_where_they_differ(bench):
    """0.46 g where 0.45 g was asked for is 2.2 % off; 0.451 g is not worth a word. By hand."""
    series = make_series(bench)
    first, second = series.trials.filter(dosages__dosage_pct="0.3").order_by("position")
    first.dosages.update(weighed_g=Decimal("0.46"))
    second.dosages.update(weighed_g=Decimal("0.451"))
    sheet = series_sheet(bench, load_series(bench, series.number))
    differs = {row.trial.code: row.doses[0].differs for row in sheet.cups if row.doses}
    assert differs[first.code]
    assert not differs[second.code]


def test_word_instead_of_a_figure_stands_at_its_cup(bench):
    series = make_series(bench)
    cup = series.trials.order_by("position").first()
    WetReading.objects.create(trial=cup, quantity="density", where="mix", word="spilled")
    WetReading.objects.create(trial=cup, quantity="appearance", where="mix", word="even")
    WetReading.objects.create(trial=cup, quantity="viscosity", where="mix", value=Decimal(1500))
    first, *others = series_sheet(bench, load_series(bench, series.number)).cups
    assert first.words == ("density: spilled",)
    assert not any(row.words for row in others)


def test_base_that_may_not_be_seen_is_not_linked(bench, colleague):
    series = make_series(colleague, revision=make_epoxy_base(bench))
    Base.objects.update(restricted=True)
    assert not series_sheet(colleague, load_series(colleague, series.number)).base_visible
