"""Tip speed of a dissolver, and the same shear at another size."""

from trials.science import shear

from .form import SumForm, choice, number, same
from .lines import Given, Line, Sum

PRIMERS = "common in dissolver makers' primers"


class ShearForm(SumForm):
    blade_mm = number("Blade", "mm", help_text="diameter")
    rpm = number("Speed", "rpm")
    vessel_mm = number("Vessel", "mm", help_text="inner diameter")
    tip_speed_m_s = number("Tip speed wanted", "m/s")
    to_blade_mm = number("Blade of the other vessel", "mm")
    rule = choice("Kept equal", same(shear.SCALE_UP_RULES), initial=shear.SCALE_UP_RULES[0])


def _remarks(given: Given):
    if None not in (given.blade_mm, given.vessel_mm) and not shear.usual_blade(given.blade_mm, given.vessel_mm):
        yield (
            "note",
            f"A blade of {given.blade_mm:g} mm in {given.vessel_mm:g} mm is unusual: about a third, from a quarter to"
            " half of the vessel (common practice, no source).",
        )


SHEAR = Sum(
    "tip-speed",
    "Tip speed",
    "How fast the edge of a blade runs, the speed for a wanted one, and the same in another vessel.",
    ShearForm,
    (
        Line(
            "Tip speed",
            "m/s",
            "π · D · n",
            f"{PRIMERS}: 20 and more to grind, 2 to 6 to let down",
            ("blade_mm", "rpm"),
            lambda g: shear.tip_speed_m_s(g.blade_mm, g.rpm),
        ),
        Line(
            "Speed for the tip speed wanted",
            "rpm",
            "v/(π · D)",
            PRIMERS,
            ("tip_speed_m_s", "blade_mm"),
            lambda g: shear.rpm_for_tip_speed(g.tip_speed_m_s, g.blade_mm),
        ),
        Line(
            "Blade over vessel",
            "",
            "D/T",
            f"{PRIMERS}: about a third",
            ("blade_mm", "vessel_mm"),
            lambda g: shear.blade_ratio(g.blade_mm, g.vessel_mm),
            digits=2,
        ),
        Line(
            "Speed in the other vessel",
            "rpm",
            "n · D constant at equal tip speed, n³ · D² at equal power per volume",
            "Z. Berk, Food Process Engineering and Technology, chapter 7; equal power assumes turbulent flow",
            ("blade_mm", "rpm", "to_blade_mm"),
            lambda g: shear.scale_up_rpm(g.blade_mm, g.rpm, g.to_blade_mm, rule=g.rule),
        ),
    ),
    remarks=_remarks,
    cautions=("A running disperser catches sleeves, hair and gloves: fix the cup, and stop it before you reach in.",),
)
