from datetime import date, timedelta

import psycopg
import pytest
from django.db import DatabaseError, connection, transaction
from django.test.utils import CaptureQueriesContext

from tests import cup_making
from tests.cup_making import dose, make_candidate, make_panel
from tests.making import NOW
from trials.models import Base, Failure, Person, RawMaterial, Series, SeriesShare, Trial, TrialSearch, Working
from trials.queries import search
from trials.queries.exact import Record, exact_record
from trials.queries.search import Asked, Place, find_trials

pytestmark = pytest.mark.django_db


def codes(person, **asked):
    return [row.trial.code for row in find_trials(person, Asked(**asked)).rows]


def make_cups(actor, *, title="Scout", **values):
    trials = cup_making.make_cups(actor, **values)
    Series.objects.filter(pk=trials[0].series_id).update(title=title)
    return trials


def change(trial, **values):
    Trial.objects.filter(pk=trial.pk).update(**values)
    return trial


@pytest.fixture
def cup(bench):
    """417-1 with a word of its own in every place that is searched."""
    trial = make_cups(
        bench,
        title="Lanterns",
        question="Does haze stay",
        conclusion="Sold to the harbour",
        lesson="Degas the pigment paste",
        not_tested="Storage at fifty degrees",
    )[0]
    change(trial, remark="Dust on the panel", lesson="Shake the bottle", made_by=bench, made_at=NOW)
    Failure.objects.create(trial=trial, mode="craters", severity=3, how="Rings like moons", cause="over-dosed")
    dose(trial, make_candidate("AR-01"))
    RawMaterial.objects.filter(code="AR-01").update(name="Quickrise")
    Base.objects.update(name="Quayside floor")
    make_panel(trial, "K7F")
    return trial


@pytest.mark.parametrize(
    "words",
    [
        "lantern", "haze staying", "harbour", "pigment pastes", "fifty", "dusts", "shaking bottles", "moon", "crater",
        "over-dosed", "AR-01", "ar-01 quickrise", "EP-417", "quayside", "417-1", "series 417", "K7F", "k7f",
        "Bench One", "nowhere or lantern", '"rings like moons"', "lantern -haddock",
    ],
)  # fmt: skip
def test_finds_by_words_of(words, cup, bench):
    assert codes(bench, words=words) == ["417-1"]


@pytest.mark.parametrize(
    "words",
    [
        "haddock",
        "AR-010",
        "AR-1",
        "AR",
        "417-2",
        "417-11",
        '"moons like rings"',
        "lantern -crater",
        "lantern haddock",
        "the",
    ],
)
def test_does_not_find(words, cup, bench):
    assert codes(bench, words=words) == []


@pytest.mark.parametrize(
    "words", ["Bläschen", "blaeschen", "BLÄSCHEN", "Bla\u0308schen", "café", "cafe", "groesse", "Größe"]
)
def test_umlauts_and_accents_may_be_typed_either_way(words, bench):
    first, second, _ = make_cups(bench, cups=3)
    change(first, lesson="Viele Bläschen, dritte Größe, Café")
    change(second, lesson="viele blaeschen, dritte groesse, cafe")
    assert codes(bench, words=words) == ["417-2", "417-1"]


def test_decimal_comma_is_a_point(bench):
    (trial,) = make_cups(bench)
    change(trial, lesson="Craters from 0,3 % on")
    assert codes(bench, words="0.3") == codes(bench, words="0,3") == ["417-1"]


class TestOrder:
    def test_best_is_lesson_then_remark_then_name(self, bench):
        named, remarked, taught, _ = make_cups(bench, cups=4)
        dose(named, make_candidate("AR-01"))
        RawMaterial.objects.filter(code="AR-01").update(name="Foamkill")
        change(remarked, remark="foamkill")
        change(taught, lesson="foamkill")
        assert codes(bench, words="foamkill", best_first=True) == ["417-3", "417-2", "417-1"]

    def test_newest_is_what_was_made_last(self, bench):
        first, second, third = make_cups(bench, cups=3)
        change(first, made_at=NOW + timedelta(days=2))
        change(second, made_at=NOW + timedelta(days=1))
        assert codes(bench) == ["417-1", "417-2", "417-3"]
        change(third, made_at=NOW + timedelta(days=3))
        assert codes(bench) == ["417-3", "417-1", "417-2"]


class TestFilters:
    @pytest.fixture(autouse=True)
    def _three(self, bench):
        one, two, three = make_cups(bench, cups=3)
        (other,) = make_cups(bench, number=418)
        dose(one, make_candidate("AR-01"))
        dose(two, make_candidate("AR-02"))
        Failure.objects.create(trial=two, mode="haze", severity=1)
        change(one, outcome="works", made_at=NOW + timedelta(days=10))
        change(two, outcome="fails", made_at=NOW + timedelta(days=20))
        change(three, made_at=NOW + timedelta(days=30))
        change(other, made_at=NOW + timedelta(days=40))

    @pytest.mark.parametrize(
        ("asked", "found"),
        [
            ({}, ["418-1", "417-3", "417-2", "417-1"]),
            ({"base": "EP-418"}, ["418-1"]),
            ({"candidate": "AR-01"}, ["417-1"]),
            ({"failure": "haze"}, ["417-2"]),
            ({"outcome": "fails"}, ["417-2"]),
            ({"since": date(2026, 3, 22)}, ["418-1", "417-3", "417-2"]),
            ({"since": date(2026, 3, 23)}, ["418-1", "417-3"]),
            ({"until": date(2026, 3, 22)}, ["417-2", "417-1"]),
            ({"since": date(2026, 3, 12), "until": date(2026, 3, 12)}, ["417-1"]),
            ({"base": "EP-417", "candidate": "AR-02", "outcome": "fails", "words": "haze"}, ["417-2"]),
            ({"base": "EP-418", "candidate": "AR-02"}, []),
        ],
    )
    def test_everything_asked_has_to_hold(self, asked, found, bench):
        assert codes(bench, **asked) == found


class TestVisible:
    def test_restricted_series_is_neither_listed_nor_counted(self, bench, colleague):
        make_cups(bench, cups=2)
        make_cups(bench, number=418, cups=3, restricted=True)
        found = find_trials(colleague, Asked())
        assert ([row.trial.code for row in found.rows], found.count) == (["417-2", "417-1"], 2)
        assert find_trials(bench, Asked()).count == 5

    def test_named_person_finds_it(self, bench, colleague):
        (trial,) = make_cups(bench, restricted=True, title="Secret keel")
        assert codes(colleague, words="keel") == []
        SeriesShare.objects.create(series=trial.series, person=colleague)
        assert codes(colleague, words="keel") == ["417-1"]


class TestPages:
    @pytest.fixture(autouse=True)
    def _small(self, monkeypatch):
        monkeypatch.setattr(search, "A_PAGE", 3)

    def _all(self, person, **asked):
        pages, after = [], None
        while after != "":
            found = find_trials(person, Asked(**asked), after=Place.read(after) if after else None)
            pages.append([row.trial.number for row in found.rows])
            after = found.after
        return pages

    def test_pages_follow_each_other_though_all_are_of_one_moment(self, bench):
        make_cups(bench, cups=8)
        assert self._all(bench) == [[8, 7, 6], [5, 4, 3], [2, 1]]

    def test_last_page_that_is_full_has_none_after_it(self, bench):
        make_cups(bench, cups=6)
        assert self._all(bench) == [[6, 5, 4], [3, 2, 1]]

    def test_ranked_pages_follow_each_other(self, bench):
        cups = make_cups(bench, cups=8)
        for trial in cups[::2]:
            change(trial, lesson="foam " * trial.number)
        for trial in cups[1::2]:
            change(trial, remark="foam")
        # Odd cups say it in their lessons, ever more often; even ones once in a remark, alike.
        assert self._all(bench, words="foam", best_first=True) == [[7, 5, 3], [1, 8, 6], [4, 2]]

    def test_what_is_added_meanwhile_shifts_no_page(self, bench):
        make_cups(bench, cups=5)
        first = find_trials(bench, Asked())
        make_cups(bench, number=418)
        second = find_trials(bench, Asked(), after=Place.read(first.after))
        assert [row.trial.code for row in second.rows] == ["417-2", "417-1"]

    def test_count_stops_and_says_so(self, bench, monkeypatch):
        monkeypatch.setattr(search, "COUNTED", 4)
        cups = make_cups(bench, cups=5)
        assert (found := find_trials(bench, Asked())).count == 4
        assert found.more
        change(cups[0], lesson="lanterns scout")
        # Of more than it counts it ranks the newest: the oldest, though the best, is not among them.
        assert self._all(bench, words="scout", best_first=True) == [[5, 4, 3], [2]]
        cups[4].delete()
        assert (found := find_trials(bench, Asked())).count == 4
        assert not found.more

    @pytest.mark.parametrize("text", ["", "1~2~3~4", "yesterday~3", "2026-03-02~3", "2026-03-02T00:00:00+00:00~x"])
    def test_place_that_is_none_is_refused(self, text):
        with pytest.raises(ValueError, match=r".+"):
            Place.read(text)


class TestKept:
    """The words follow the record whoever writes and however."""

    def test_update_of_a_queryset(self, cup, bench):
        change(cup, lesson="Lower the blade")
        assert codes(bench, words="blade") == ["417-1"]
        assert codes(bench, words="bottle") == []

    def test_plain_sql(self, cup, bench):
        with connection.cursor() as cursor:
            cursor.execute("UPDATE trials_series SET title = 'Whalebone'")
            cursor.execute("DELETE FROM trials_failure")
        assert codes(bench, words="whalebone") == ["417-1"]
        assert codes(bench, words="moons") == []

    def test_copy(self, bench):
        first, second = make_cups(bench, cups=2)
        statement = "COPY trials_failure (trial_id, mode, severity, how, cause) FROM STDIN"
        with connection.cursor() as cursor, cursor.copy(statement) as copy:
            copy.write_row((first.pk, "craters", 1, "Moonlike", ""))
            copy.write_row((second.pk, "haze", 1, "Moonlike too", ""))
        assert codes(bench, words="moonlike") == ["417-2", "417-1"]

    def test_merge(self, cup, bench):
        with connection.cursor() as cursor:
            cursor.execute(
                "MERGE INTO trials_trial t USING (VALUES ('417-1', 'Herring')) AS said (code, lesson)"
                " ON t.code = said.code WHEN MATCHED THEN UPDATE SET lesson = said.lesson"
            )
        assert codes(bench, words="herring") == ["417-1"]

    def test_names_that_change_elsewhere(self, cup, bench):
        Base.objects.update(name="Lighthouse")
        RawMaterial.objects.filter(code="AR-01").update(code="AR-77")
        Person.objects.filter(pk=bench.pk).update(full_name="Ottilie Brandt")
        assert codes(bench, words="lighthouse AR-77 ottilie") == ["417-1"]
        assert codes(bench, words="AR-01") == codes(bench, words="quayside") == []

    def test_dosage_and_panel_that_go(self, cup, bench):
        cup.dosages.all().delete()
        cup.panels.update(code="Z9Z")
        assert codes(bench, words="AR-01") == codes(bench, words="K7F") == []
        assert codes(bench, words="Z9Z") == ["417-1"]

    def test_trial_that_goes_takes_its_words_with_it(self, cup):
        cup.delete()
        assert not TrialSearch.objects.exists()

    def test_nothing_is_written_where_no_word_changed(self, cup):
        def version():
            with connection.cursor() as cursor:
                cursor.execute("SELECT ctid::text FROM trials_trialsearch")
                return cursor.fetchone()

        before = version()
        change(cup, state="applied")
        cup.dosages.update(weighed_g="0.61")
        Trial.objects.get(pk=cup.pk).save()
        assert version() == before
        change(cup, lesson="Another")
        assert version() != before

    def test_a_statement_is_one_refresh_however_many_rows_it_writes(self):
        with connection.cursor() as cursor:
            cursor.execute("SELECT tgname, tgtype & 1 FROM pg_trigger WHERE tgname LIKE 'search_after_%'")
            for_each_row = dict(cursor.fetchall())
        assert len(for_each_row) == 3
        assert set(for_each_row.values()) == {0}

    def test_application_role_writes_no_words_itself(self, cup, bench, as_application_role):
        with as_application_role():
            change(cup, lesson="Written by the pages")
            for statement in ("UPDATE trials_trialsearch SET at = now()", "DELETE FROM trials_trialsearch"):
                with pytest.raises(DatabaseError) as refused, transaction.atomic(), connection.cursor() as cursor:
                    cursor.execute(statement)
                assert isinstance(refused.value.__cause__, psycopg.errors.InsufficientPrivilege)
            assert codes(bench, words="pages") == ["417-1"]


class TestRow:
    def test_says_what_was_tried(self, cup, bench):
        Working.objects.create(trial=cup, position=1, kind="disperse", blade_mm=40, rpm=1500, minutes=5)
        change(cup, outcome="fails")
        (row,) = find_trials(bench, Asked()).rows
        assert row.additives == ("AR-01 0.5\u00a0% on total, on top, as supplied",)
        # π · 0.040 m · 25 /s, by hand.
        assert row.tip_speed_m_s == pytest.approx(3.1416, abs=1e-4)
        assert (row.stages, row.word, row.reference) == ("let-down", "fails", False)

    def test_shows_the_passage_in_which_the_words_stand(self, cup, bench):
        def said(words):
            (row,) = find_trials(bench, Asked(words=words)).rows
            return row.said, "".join(f"[{p.text}]" if p.marked else p.text for p in row.pieces)

        assert said("") == ("lesson", "Shake the bottle")
        assert said("bottles") == ("lesson", "Shake the [bottle]")
        assert said("moon") == ("how it showed", "craters: Rings like [moons]")
        assert said("dust panel") == ("remark", "[Dust] on the [panel]")
        assert said("harbour") == ("conclusion of the series", "Sold to the [harbour]")
        assert said("K7F") == ("lesson", "Shake the bottle")

    def test_marks_folded_words_and_codes_as_they_were_typed(self, bench):
        (trial,) = make_cups(bench)
        change(trial, lesson="No  Bläschen,\nbut (AR-01) craters: see 417-5 <b>.")
        (row,) = find_trials(bench, Asked(words="blaeschen ar-01 417-5")).rows
        assert [piece.text for piece in row.pieces if piece.marked] == ["Bläschen", "AR-01", "417-5"]
        assert "".join(piece.text for piece in row.pieces) == "No Bläschen, but (AR-01) craters: see 417-5 <b>."

    def test_long_passage_is_cut_around_the_first_word_found(self, bench):
        (trial,) = make_cups(bench)
        change(trial, lesson=" ".join([*["before"] * 60, "lantern", *["after"] * 60]))
        (row,) = find_trials(bench, Asked(words="lantern")).rows
        text = "".join(piece.text for piece in row.pieces)
        assert text == " ".join(["…", *["before"] * 8, "lantern", *["after"] * 36, "…"])


def test_nothing_is_parsed_again_by_a_search(cup, bench):
    """Ranking by a column that is named as text has every row's words parsed anew."""
    with CaptureQueriesContext(
        connection,
    ) as queries:
        assert codes(bench, words="lantern crater", best_first=True, candidate="AR-01") == ["417-1"]
    asked = [query["sql"] for query in queries]
    assert any("ts_rank" in sql for sql in asked)
    assert [sql for sql in asked if "to_tsvector(" in sql] == []


@pytest.mark.parametrize("cups", [1, 3])
@pytest.mark.parametrize("words", ["", "lantern"])
def test_queries_are_fixed_in_number(cups, words, bench, django_assert_num_queries):
    candidate = make_candidate()
    for trial in make_cups(bench, cups=cups, title="Lanterns"):
        dose(trial, candidate)
        Failure.objects.create(trial=trial, mode="craters", severity=3, how="Rings")
        Working.objects.create(trial=trial, position=1, kind="disperse", blade_mm=40, rpm=1500, minutes=5)
    with django_assert_num_queries(8 if words else 7):
        find_trials(bench, Asked(words=words, best_first=True))


class TestExactRecord:
    @pytest.mark.parametrize(
        ("typed", "record"),
        [
            ("417-1", Record("trial", "417-1")),
            ("417", Record("series", 417)),
            ("Series  417", Record("series", 417)),
            ("k7f", Record("panel", "K7F")),
            ("ep-417", Record("base", "EP-417")),
            ("AR-01", Record("candidate", "AR-01")),
            ("EP-417-R", Record("material", "EP-417-R")),
            ("417-9", None),
            ("418", None),
            ("enquiry 417", None),
            ("AR-01 craters", None),
            ("lantern", None),
            ("99999999999999", None),
            ("", None),
        ],
    )
    def test_of_what_was_typed(self, typed, record, cup, bench):
        assert exact_record(bench, typed) == record

    def test_two_of_one_code_are_none(self, cup, bench):
        make_panel(cup, "AR9")
        make_candidate("AR9")
        assert exact_record(bench, "AR9") is None

    @pytest.mark.parametrize("typed", ["417-1", "417", "K7F", "EP-417"])
    def test_of_others_is_not_told(self, typed, cup, colleague):
        Series.objects.update(restricted=True)
        Base.objects.update(restricted=True)
        assert exact_record(colleague, typed) is None
