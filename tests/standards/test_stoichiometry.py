"""Equivalents, index and reactive groups.

Formulas: turiya.nl "Guide to epoxy calculations" and "Guide to urethane calculations". Numbers without a
printed source were worked out by hand from them.
"""

import math

import pytest
from molmass import Formula

from tests.standards.printed import printed
from trials.science import stoichiometry as st

# formula, reactive groups, equivalent weight: molmass 2026.1.8, Formula(f).mass / groups
EPOXIDES = [
    ("C21H24O4", 2, "170.207"),  # bisphenol A diglycidyl ether
    ("C19H20O4", 2, "156.180"),  # bisphenol F diglycidyl ether
    ("C12H22O4", 2, "115.151"),  # 1,6-hexanediol diglycidyl ether
    ("C10H18O4", 2, "101.124"),  # 1,4-butanediol diglycidyl ether
    ("C11H20O4", 2, "108.137"),  # neopentyl glycol diglycidyl ether
    ("C15H26O6", 3, "100.788"),  # trimethylolpropane triglycidyl ether
    ("C10H12O2", 1, "164.202"),  # cresyl glycidyl ether
    ("C15H30O2", 1, "242.398"),  # C12 alkyl glycidyl ether
    ("C17H34O2", 1, "270.451"),  # C14 alkyl glycidyl ether
    ("C11H22O2", 1, "186.292"),  # 2-ethylhexyl glycidyl ether
]
# formula, nitrogens, amine hydrogens, equivalent weight
AMINES = [
    ("C4H13N3", 3, 5, "20.633"),  # diethylenetriamine
    ("C6H18N4", 4, 6, "24.372"),  # triethylenetetramine, linear
    ("C10H22N2", 2, 4, "42.574"),  # isophorone diamine
    ("C8H12N2", 2, 4, "34.049"),  # m-xylylenediamine
    ("C8H18N2", 2, 4, "35.561"),  # 1,3-bis(aminomethyl)cyclohexane
    ("C9H22N2", 2, 4, "39.571"),  # trimethylhexamethylenediamine
    ("C13H26N2", 2, 4, "52.590"),  # bis(4-aminocyclohexyl)methane
    ("C13H14N2", 2, 4, "49.566"),  # diaminodiphenylmethane
    ("C6H14N2", 2, 4, "28.547"),  # 1,2-diaminocyclohexane
    ("C6H15N3", 3, 3, "43.068"),  # aminoethylpiperazine
]
# formula, isocyanates, equivalent weight, % NCO
ISOCYANATES = [
    ("C8H12N2O2", 2, "84.097", "49.96"),  # hexamethylene diisocyanate
    ("C24H36N6O6", 3, "168.193", "24.98"),  # its isocyanurate
    ("C12H18N2O2", 2, "111.142", "37.81"),  # isophorone diisocyanate
    ("C36H54N6O6", 3, "222.284", "18.90"),  # its isocyanurate
    ("C15H10N2O2", 2, "125.126", "33.58"),  # 4,4'-diphenylmethane diisocyanate
    ("C9H6N2O2", 2, "87.078", "48.25"),  # toluene diisocyanate
    ("C7H10N2O2", 2, "77.083", "54.51"),  # pentamethylene diisocyanate
]
# formula, hydroxyls, equivalent weight, hydroxyl value
ALCOHOLS = [
    ("C3H8O3", 3, "30.698", "1827.7"),  # glycerol
    ("C4H10O2", 2, "45.061", "1245.1"),  # butanediol
    ("C57H104O9", 3, "311.14", "180.3"),  # triricinolein
]
# formula of diamine + 2 diethyl maleate, equivalent weight, amine value
ASPARTATES = [
    ("C29H50N2O8", "277.36", "202.3"),  # from bis(4-aminocyclohexyl)methane
    ("C31H54N2O8", "291.39", "192.5"),  # from its dimethyl homologue
    ("C22H40N2O8", "230.28", "243.6"),  # from methylpentanediamine
]
KOH_MG = 1000.0 * Formula("KOH").mass
NCO = Formula("NCO").mass


def test_rounded_constants_stand_within_half_a_tenth_of_a_per_cent_of_the_exact_masses():
    assert pytest.approx(st.NCO_CONSTANT, rel=5e-4) == 100.0 * NCO
    assert pytest.approx(st.KOH_CONSTANT_MG, rel=5e-4) == KOH_MG
    assert Formula("C2H3O").mass == pytest.approx(st.EPOXIDE_G_MOL, abs=1e-3)
    assert Formula("O").mass == pytest.approx(st.OXYGEN_G_MOL, abs=1e-3)
    assert Formula("H2O").mass / 2.0 == pytest.approx(st.water_equivalent_g, abs=1e-3)


@pytest.mark.parametrize(("formula", "groups", "equivalent"), EPOXIDES)
def test_epoxide_content_of_pure_substances(formula, groups, equivalent):
    exact = Formula(formula).mass / groups
    assert exact == printed(equivalent)
    assert st.epoxide_pct(exact) == pytest.approx(
        100.0 * groups * Formula("C2H3O").mass / Formula(formula).mass, rel=1e-4
    )


@pytest.mark.parametrize(("formula", "nitrogens", "hydrogens", "equivalent"), AMINES)
def test_amine_values_of_pure_substances(formula, nitrogens, hydrogens, equivalent):
    mass = Formula(formula).mass
    assert mass / hydrogens == printed(equivalent)
    found = st.equivalent_from_amine_value(KOH_MG * nitrogens / mass, hydrogens_per_nitrogen=hydrogens / nitrogens)
    assert found == pytest.approx(float(equivalent), rel=5e-4)


@pytest.mark.parametrize(("formula", "groups", "equivalent", "nco_pct"), ISOCYANATES)
def test_isocyanate_contents_of_pure_substances(formula, groups, equivalent, nco_pct):
    mass = Formula(formula).mass
    assert mass / groups == printed(equivalent)
    assert 100.0 * groups * NCO / mass == printed(nco_pct)
    assert st.equivalent_from_nco_pct(100.0 * groups * NCO / mass) == pytest.approx(mass / groups, rel=5e-4)


@pytest.mark.parametrize(("formula", "groups", "equivalent", "hydroxyl_value"), ALCOHOLS)
def test_hydroxyl_values_of_pure_substances(formula, groups, equivalent, hydroxyl_value):
    mass = Formula(formula).mass
    assert mass / groups == printed(equivalent)
    assert KOH_MG * groups / mass == printed(hydroxyl_value)
    assert st.equivalent_from_hydroxyl_value(KOH_MG * groups / mass) == pytest.approx(mass / groups, rel=5e-4)


@pytest.mark.parametrize(("formula", "equivalent", "amine_value"), ASPARTATES)
def test_an_aspartate_has_one_hydrogen_on_each_nitrogen(formula, equivalent, amine_value):
    assert Formula(formula).mass / 2.0 == printed(equivalent)
    found = st.equivalent_from_amine_value(float(amine_value), hydrogens_per_nitrogen=1)
    assert found == pytest.approx(float(equivalent), rel=5e-4)


def test_water():
    assert Formula("H2O").mass / 2.0 == printed("9.008")
    assert st.water_equivalent_g == printed("9.008")


def test_isophorone_diamine_by_nitrogen_and_by_hydrogen():
    # amine value 658.9, by hand: 85.1 g per nitrogen, 42.57 per hydrogen
    assert st.equivalent_from_amine_value(658.9, hydrogens_per_nitrogen=1) == printed("85.1")
    assert st.equivalent_from_amine_value(658.9, hydrogens_per_nitrogen=2) == printed("42.57")


def test_commercial_hexamethylene_trimer():
    # 21.8 % NCO, usual for the commercial trimer (from memory)
    assert st.equivalent_from_nco_pct(21.8) == printed("192.66")


def test_blend_of_two_resins_and_a_filler():
    # sorwarchem.blogspot.com, May 2022, example 1; prints 209
    blend = st.equivalent_of_blend([80.0, 10.0, 10.0], [189.0, 183.0, math.inf])
    assert blend == printed("209")
    assert blend == printed("209.238")


def test_parts_per_hundred():
    # same page, example 2: prints 20.6
    assert st.hardener_g(100.0, 209.0, 43.0) == printed("20.574")
    # Handbook of Adhesive Technology, extract at kraska.biz: diethylenetriamine 20.6 on 200
    assert st.hardener_g(100.0, 200.0, 20.6) == printed("10.3")


@pytest.mark.parametrize(
    ("resin_equivalent", "expected"),
    [
        (190.0, ["10.86", "12.83", "22.41", "17.92", "26.09"]),
        (182.0, ["11.34", "13.39", "23.39", "18.71", "27.23"]),
    ],
)
def test_parts_per_hundred_of_five_amines(resin_equivalent, expected):
    # 100·AHEW/EEW with molmass equivalents: DETA, TETA, IPDA, MXDA, DDM
    amines = [AMINES[i] for i in (0, 1, 2, 3, 7)]
    for (formula, _, hydrogens, _), parts in zip(amines, expected, strict=True):
        assert st.hardener_g(100.0, resin_equivalent, Formula(formula).mass / hydrogens) == printed(parts)


def test_isocyanate_equivalent_of_a_polyurethane_guide():
    # polyurethane calculation guide of 2001 (scribd 37078922), prints 136 for 31.0 % NCO
    assert st.equivalent_from_nco_pct(31.0) == printed("135.48")
    assert st.equivalent_from_nco_pct(31.0) == printed("136")


def test_ethylene_glycol():
    # same guide: hydroxyl value 1810 gives 31.0 g per group and 62.0 g/mol; molmass 62.068
    assert st.equivalent_from_hydroxyl_value(1810.0) == printed("31.0")
    assert 2.0 * st.equivalent_from_hydroxyl_value(1810.0) == printed("62.0")
    assert Formula("C2H6O2").mass == printed("62.068")
    assert 2.0 * KOH_MG / Formula("C2H6O2").mass == printed("1807.9")


@pytest.mark.parametrize(("index", "grams"), [(1.00, "37.90"), (1.05, "39.79")])
def test_isocyanate_for_a_resin_makers_sample_sheet(index, grams):
    # resin maker's sample sheet (vdocuments transcript): 95.26 g of OH equivalent 460, NCO equivalent 183
    assert st.hardener_g(95.26, 460.0, 183.0, index=index) == printed(grams)


def test_the_published_example_that_forgets_its_own_index():
    # A published page on polyurethane coatings: hydroxyl value 120 on solids, 62 parts of a 70 % resin, 9 %
    # NCO, index 1.2. It prints 43.3 parts, which is the result at index 1.0
    solids = 62.0 * 0.70
    hydroxyl, isocyanate = st.equivalent_from_hydroxyl_value(120.0), st.equivalent_from_nco_pct(9.0)
    assert st.hardener_g(solids, hydroxyl, isocyanate, index=1.2) == printed("51.99")
    assert st.hardener_g(solids, hydroxyl, isocyanate) == printed("43.32")


def test_epoxide_content_of_a_resin_of_190():
    # molmass: C2H3O 43.045 g/mol, O 15.999 g/mol
    assert st.epoxide_mol_kg(190.0) == printed("5.2632")
    assert st.epoxide_pct(190.0) == printed("22.655")
    assert st.oxirane_oxygen_pct(190.0) == printed("8.421")


def test_hardener_diluted_with_an_inert_plasticiser():
    # by hand
    assert st.equivalent_of_blend([60.0, 40.0], [42.6, math.inf]) == printed("71.0")
    blend = st.equivalent_of_blend([50.0, 20.0, 30.0], [42.6, 34.05, math.inf])
    assert blend == printed("56.783")


class TestReactiveCarrierInAnEpoxyBase:
    """85 g of EEW 187 and 15 g of EEW 155 with isophorone diamine 42.574; by hand."""

    amine = 42.574
    mass = (85.0, 15.0)
    equivalents = (187.0, 155.0)

    def demand(self, extra_g=0.0, extra_equivalent=math.inf):
        blend = st.equivalent_of_blend((*self.mass, extra_g), (*self.equivalents, extra_equivalent))
        return blend, st.hardener_g(100.0 + extra_g, blend, self.amine)

    def test_without_additive(self):
        blend, hardener = self.demand()
        assert blend == printed("181.383")
        assert 100.0 / blend == printed("0.551320")
        assert hardener == printed("23.4719")

    @pytest.mark.parametrize(
        ("additive_g", "blend", "grams", "shift"),
        [(0.5, "181.635", "23.5565", "0.3604"), (1.0, "181.886", "23.6411", "0.7207")],
    )
    def test_additive_of_which_60_per_cent_is_a_diluent_of_151(self, additive_g, blend, grams, shift):
        additive = st.equivalent_of_blend([60.0, 40.0], [151.0, math.inf])
        assert additive == printed("251.667")
        found, hardener = self.demand(additive_g, additive)
        assert found == printed(blend)
        assert hardener == printed(grams)
        assert st.shift_pct(self.demand()[1], hardener) == printed(shift)

    def test_the_same_gram_taken_as_inert(self):
        assert self.demand(1.0)[0] == printed("183.197")

    @pytest.mark.parametrize(
        ("additive_g", "grams", "shift"), [(1.0, "23.8046", "1.4177"), (2.0, "24.1374", "2.8353")]
    )
    def test_additive_of_which_90_per_cent_is_hexanediol_diglycidyl_ether(self, additive_g, grams, shift):
        diluent = 115.15
        assert Formula("C12H22O4").mass / 2.0 == pytest.approx(diluent, abs=0.01)
        additive = st.equivalent_of_blend([90.0, 10.0], [diluent, math.inf])
        assert additive == printed("127.944")
        hardener = self.demand(additive_g, additive)[1]
        assert hardener == printed(grams)
        assert st.shift_pct(self.demand()[1], hardener) == printed(shift)


class TestPolyurethaneBase:
    """100 g of hydroxyl value 160 with 23 % NCO at index 1.05; by hand."""

    polyol = st.equivalent_from_hydroxyl_value(160.0)
    isocyanate = st.equivalent_from_nco_pct(23.0)

    def demand(self, extra_g=0.0, extra_equivalent=math.inf):
        blend = st.equivalent_of_blend([100.0, extra_g], [self.polyol, extra_equivalent])
        return st.hardener_g(100.0 + extra_g, blend, self.isocyanate, index=1.05)

    def test_alone(self):
        assert self.demand() == printed("54.6850")

    def test_a_hydroxyl_carrier_shifts_little(self):
        with_carrier = self.demand(1.0, st.equivalent_from_hydroxyl_value(35.0))
        assert with_carrier == printed("54.8046")
        assert st.shift_pct(self.demand(), with_carrier) == printed("0.219")

    def test_a_trace_of_water_shifts_much(self):
        with_water = self.demand(0.05, st.water_equivalent_g)
        assert with_water == printed("55.7493")
        assert st.shift_pct(self.demand(), with_water) == printed("1.95")


def test_aspartate_with_a_commercial_trimer():
    # by hand: 100 g of 277.36 g/eq, 21.8 % NCO, index 1.05
    trimer = st.equivalent_from_nco_pct(21.8)
    grams = st.hardener_g(100.0, 277.36, trimer, index=1.05)
    assert grams == printed("72.935")
    assert st.index(100.0, 277.36, grams, trimer) == pytest.approx(1.05)


def test_carbon_dioxide_of_a_trace_of_water():
    # ideal gas, one mole for each mole of water: 0.05 g at 23 °C
    assert st.carbon_dioxide_ml(0.05) == printed("67.4")
    moles = 0.05 / Formula("H2O").mass
    assert st.carbon_dioxide_ml(0.05) == pytest.approx(moles * 8.314462618 * 296.15 / 101325 * 1e6, rel=1e-4)


@pytest.mark.parametrize(
    ("chemistry", "low", "usual_low", "usual_high", "high", "over"),
    [
        ("epoxy-amine", 0.85, 0.95, 1.00, 1.05, "amine hydrogen over epoxide"),
        ("polyurethane", 1.00, 1.00, 1.10, 1.10, "isocyanate over hydroxyl"),
        ("polyaspartic", 1.05, 1.05, 1.15, 1.15, "isocyanate over aspartate amine"),
    ],
)
def test_usual_index(chemistry, low, usual_low, usual_high, high, over):
    # common practice, no source
    assert st.index_band(chemistry) == st.Band(low, usual_low, usual_high, high, over)


@pytest.mark.parametrize(
    ("group", "chemistries"),
    [
        # common practice, no source: a glycidyl ether counts with amines, a hydroxyl or water with
        # isocyanates
        ("epoxide", {"epoxy-amine"}),
        ("acrylate", {"epoxy-amine"}),
        ("hydroxyl", {"polyurethane", "polyaspartic"}),
        ("water", {"polyurethane", "polyaspartic"}),
        ("aspartate amine", {"polyurethane", "polyaspartic"}),
    ],
)
def test_a_carrier_counts_only_where_it_reacts(group, chemistries):
    assert {chemistry for chemistry in st.CHEMISTRIES if st.reacts(group, chemistry)} == chemistries
