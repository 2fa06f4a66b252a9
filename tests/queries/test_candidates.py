from datetime import date
from decimal import Decimal

import pytest

from trials.operations.candidates import add_candidate
from trials.operations.materials import add_material, add_paper
from trials.queries.candidates import candidate_sheet, find_candidates

pytestmark = pytest.mark.django_db

TODAY = date(2026, 3, 10)


def _candidate(actor, code, *, price=None, withdrawn=False, **more):
    material = add_material(
        actor=actor,
        code=code,
        name=f"Defoamer {code}",
        function="air-release candidate",
        price_per_kg=price,
        withdrawn=withdrawn,
        hazards=["H226"],
    )
    values = {
        "chemistry": "polysiloxane solution",
        "carrier": "solvent",
        "silicone": True,
        "strength": 3,
        "macro_foam": 3,
        "air_release": 3,
        "diluted_in": "xylene",
        **more,
    }
    return add_candidate(actor=actor, material=material, **values)


class TestList:
    @pytest.fixture(autouse=True)
    def _some(self, bench):
        _candidate(bench, "AR-02", strength=5, tip_speed_m_s=Decimal(6), price=Decimal(30))
        _candidate(bench, "AR-01", strength=5, tip_speed_m_s=Decimal(2))
        _candidate(bench, "AR-03", strength=1, chemistry="silicone-free polymer", silicone=False, price=Decimal(12))
        _candidate(bench, "AR-04", withdrawn=True)

    @pytest.mark.parametrize(
        ("asked", "codes"),
        [
            ({}, ["AR-01", "AR-02", "AR-03"]),
            ({"withdrawn": True}, ["AR-01", "AR-02", "AR-04", "AR-03"]),
            ({"silicone": False}, ["AR-03"]),
            ({"silicone": True}, ["AR-01", "AR-02"]),
            ({"chemistry": "silicone-free polymer"}, ["AR-03"]),
            ({"words": "defoamer 02"}, ["AR-02"]),
            ({"sort": "price"}, ["AR-03", "AR-02", "AR-01"]),
            ({"sort": "code"}, ["AR-01", "AR-02", "AR-03"]),
            ({"sort": "nonsense"}, ["AR-01", "AR-02", "AR-03"]),
        ],
    )
    def test_finds_in_order(self, asked, codes):
        assert [row.code for row in find_candidates(today=TODAY, **asked).rows] == codes


def test_cost_is_told_at_both_ends_of_the_window(bench):
    _candidate(bench, "AR-01", price=Decimal("24.00"), from_pct=Decimal("0.1"), to_pct=Decimal("0.5"))
    (row,) = find_candidates(today=TODAY).rows
    # 0.1 kg and 0.5 kg in 100 kg, at 24 per kg.
    assert (row.cost_from, row.cost_to) == (pytest.approx(2.4), pytest.approx(12.0))


@pytest.mark.parametrize(("price", "to_pct"), [(None, Decimal("0.5")), (Decimal(24), None)])
def test_cost_is_not_known_without_price_or_dosage(bench, price, to_pct):
    _candidate(bench, "AR-01", price=price, to_pct=to_pct)
    assert find_candidates(today=TODAY).rows[0].cost_to is None


class TestSheet:
    def test_cautions_are_its_own_then_those_of_chemistry_and_carrier(self, bench):
        candidate = _candidate(bench, "AR-01", cautions="Crystallises below 5 °C.")
        told = candidate_sheet(candidate, today=TODAY).cautions
        assert told[0] == "Crystallises below 5 °C."
        assert [line.split(":")[0] for line in told[1:]] == [
            "Contains silicone",
            "Too much of it craters and crawls, and the second coat may not wet the first",
            "The carrier is solvent",
        ]

    def test_silicone_free_and_undiluted_are_told(self, bench):
        candidate = _candidate(
            bench, "AR-01", chemistry="silicone-free polymer", silicone=False, carrier="none", diluted_in=""
        )
        told = " ".join(candidate_sheet(candidate, today=TODAY).cautions)
        assert "Contains silicone" not in told
        assert "Not to be diluted" in told

    def test_unusual_window_is_asked_about(self, bench):
        candidate = _candidate(
            bench, "AR-01", from_pct=Decimal("0.05"), to_pct=Decimal("3.0"), highest_tried_pct=Decimal("1.0")
        )
        assert candidate_sheet(candidate, today=TODAY).unusual == (
            "Window 0.05 to 3 %: a polysiloxane solution mostly wants 0.1 to 1 %.",
            "The window ends at 3.0 %, and the highest tried is 1.0 %.",
        )

    def test_papers_and_hazards_are_those_of_the_material(self, bench):
        candidate = _candidate(bench, "AR-01")
        add_paper(
            actor=bench, material=candidate.material, subject="food contact", title="Letter", expires=date(2026, 3, 9)
        )
        sheet = candidate_sheet(candidate, today=TODAY)
        assert [(view.paper.title, view.standing.words) for view in sheet.papers] == [("Letter", "expired 1 day ago")]
        assert (sheet.label.signal_word, sheet.statements) == (
            "Warning",
            (("H226", "Flammable liquid and vapour"),),
        )
