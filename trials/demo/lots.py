"""Lots on the shelf. Days count back from the one that the demonstration ends on; below 0 lies ahead."""

from typing import NamedTuple

from .materials import AMINE_VALUE, EQUIVALENT, HYDROXYL_VALUE, NCO


class LotRow(NamedTuple):
    """``certificate``: what the certificate gives and its value."""

    code: str
    number: str
    received: int
    expires: int | None
    on_hand: str
    by: str
    certificate: tuple[str, str] | None = None
    density: str | None = None
    non_volatile: str | None = None
    water: str | None = None


class HandlingRow(NamedTuple):
    """What somebody noted later on a lot: opened so many days ago, what stood in the bottle, shaken, warmed."""

    code: str
    number: str
    opened: int
    by: str
    appearance: str = ""
    shaken: bool | None = None
    warmed: bool | None = None


L = LotRow

# fmt: off
LOTS = (
    L("EP-104", "R-7702", 715, -15, "11.4", "lena", (EQUIVALENT, "188.4"), water="0.03"),
    L("EP-104", "R-7719", 455, -275, "38", "lena", (EQUIVALENT, "187.6")),
    L("EP-104", "R-7730", 140, -590, "190", "lena", (EQUIVALENT, "196.5"), density="1.158"),
    L("EP-108", "R-6105", 500, -230, "22", "lena", (EQUIVALENT, "168.7")),
    L("EP-112", "R-8011", 330, -400, "64", "lena", (EQUIVALENT, "178.9"), water="0.02"),
    L("EP-130", "R-5523", 395, -150, "41", "tibor", non_volatile="74.6"),
    L("RD-021", "D-2214", 470, -80, "17", "lena", (EQUIVALENT, "147.1")),
    L("RD-024", "D-1180", 715, -20, "9.3", "lena", (EQUIVALENT, "288")),
    L("RD-027", "D-0917", 900, 170, "2.1", "peer"),
    L("HD-201", "A-3301", 520, 155, "4.8", "jonna", (AMINE_VALUE, "657")),
    L("HD-204", "A-3362", 690, -35, "13", "jonna", (AMINE_VALUE, "826")),
    L("HD-207", "A-3340", 710, 20, "6.0", "jonna", (AMINE_VALUE, "470")),
    L("HD-207", "A-3391", 180, -550, "25", "jonna", (AMINE_VALUE, "472")),
    L("HD-210", "A-4107", 710, -20, "12", "jonna", (EQUIVALENT, "95.4")),
    L("HD-210", "A-4152", 300, -430, "58", "jonna", (EQUIVALENT, "94.6")),
    L("HD-215", "A-4480", 290, -440, "33", "tibor", (AMINE_VALUE, "252")),
    L("HD-220", "A-4603", 660, -35, "27", "nadia", (EQUIVALENT, "81.5")),
    L("PO-301", "P-1207", 620, -110, "88", "ayo", (HYDROXYL_VALUE, "164"), water="0.03"),
    L("PO-304", "P-1255", 620, -110, "21", "ayo", (HYDROXYL_VALUE, "382"), water="0.06"),
    L("PO-310", "P-1101", 560, 10, "14", "ayo", water="0.02"),
    L("NC-401", "I-9004", 610, 245, "19", "ayo", (NCO, "31.3")),
    L("NC-401", "I-9061", 205, -160, "44", "ayo", (NCO, "31.0")),
    L("NC-407", "I-9210", 525, 160, "12", "nadia", (NCO, "21.7")),
    L("NC-407", "I-9244", 215, -150, "36", "nadia", (NCO, "21.8")),
    L("NC-410", "I-9315", 540, 175, "8.5", "nadia", (NCO, "20.1")),
    L("NC-410", "I-9340", 215, -150, "20", "nadia", (NCO, "19.9")),
    L("AS-501", "N-2045", 540, -190, "31", "nadia", (AMINE_VALUE, "200")),
    L("AS-504", "N-2061", 260, -470, "26", "nadia", (AMINE_VALUE, "191")),
    L("AS-507", "N-2070", 540, -190, "7.7", "peer", (AMINE_VALUE, "224")),
    L("FI-601", "F-3102", 700, None, "310", "tibor", water="0.05"),
    L("FI-604", "F-3150", 700, None, "420", "tibor", water="0.04"),
    L("FI-607", "F-3220", 700, None, "150", "tibor", water="0.06"),
    L("FI-610", "F-3308", 615, None, "75", "ayo", water="0.34"),
    L("FI-610", "F-3341", 360, None, "160", "ayo", water="0.03"),
    L("FI-616", "F-3405", 690, None, "90", "tibor", water="0.18"),
    L("FI-619", "F-3502", 700, None, "5.2", "tibor", water="0.9"),
    L("PI-701", "G-5501", 700, None, "140", "lena", water="0.25"),
    L("PI-704", "G-5540", 700, None, "3.0", "lena"),
    L("PI-707", "G-5562", 300, None, "24", "tibor"),
    L("PI-710", "G-5580", 300, None, "18", "tibor"),
    L("SO-901", "S-7110", 300, -430, "50", "tibor", water="0.02"),
    L("SO-904", "S-7145", 540, -190, "35", "nadia", water="0.03"),
    L("PL-040", "S-7302", 712, -18, "15", "jonna"),
    L("PL-040", "S-7366", 180, -550, "40", "jonna"),
    L("WS-801", "F-3710", 545, -185, "6.5", "nadia"),
    L("WS-804", "F-3744", 615, -115, "11", "ayo", (HYDROXYL_VALUE, "82")),
    L("CA-951", "Q-0208", 610, -120, "0.9", "ayo"),
    L("CA-954", "A-4901", 710, -20, "3.4", "jonna"),
    L("AD-971", "Q-1109", 700, -30, "5.6", "lena"),
    L("AD-974", "Q-1177", 700, -30, "4.1", "lena"),
    L("AD-977", "Q-1215", 300, -430, "7.0", "tibor"),
    L("AD-980", "Q-1248", 290, -75, "1.8", "tibor"),
    L("AD-983", "Q-1290", 540, -190, "3.6", "nadia"),
    L("WA-001", "W-1", 700, None, "20", "runa"),
    L("AR-01", "B-0141", 680, -50, "0.9", "jonna"),
    L("AR-02", "B-0152", 680, -50, "0.8", "jonna"),
    L("AR-03", "B-0133", 680, -50, "0.7", "jonna", non_volatile="12.4"),
    L("AR-03", "B-0178", 160, -570, "1.0", "ruth", non_volatile="11.1"),
    L("AR-04", "B-0204", 650, -80, "0.9", "tibor"),
    L("AR-05", "B-0211", 650, -80, "0.6", "tibor"),
    L("AR-06", "B-0219", 650, -80, "1.4", "tibor"),
    L("AR-07", "B-0226", 600, -130, "0.9", "nadia"),
    L("AR-08", "B-0230", 600, -130, "0.5", "nadia", non_volatile="20.3"),
    L("AR-09", "B-0244", 570, -160, "1.1", "nadia"),
    L("AR-10", "B-0251", 570, 25, "0.2", "peer"),
    L("AR-11", "B-0263", 520, -210, "0.8", "lena"),
    L("AR-12", "B-0270", 520, -210, "0.3", "lena"),
    L("AR-13", "B-0277", 480, -250, "0.4", "ayo"),
    L("AR-14", "B-0283", 480, -250, "0.9", "ayo"),
    L("AR-15", "B-0290", 250, -480, "0.2", "ruth"),
    L("AR-16", "B-0296", 250, -480, "0.7", "ruth"),
)

H = HandlingRow
HANDLING = (
    H("EP-104", "R-7702", 700, "tibor", "milky, crystals on the wall of the drum", warmed=True),
    H("EP-104", "R-7719", 440, "jonna", "clear", warmed=False),
    H("EP-104", "R-7730", 125, "lena", "clear, thicker than the lot before", warmed=False),
    H("PO-304", "P-1255", 598, "ayo", "clear; nitrogen over it again"),
    H("NC-401", "I-9004", 590, "ayo", "thin skin under the lid, taken off"),
    H("FI-610", "F-3308", 600, "ayo", "lumps; bag stood open in the corridor"),
    H("WS-804", "F-3744", 600, "ayo", "firm sediment, stirred up from the bottom", shaken=True),
    H("AD-971", "Q-1109", 690, "lena", "clear"),
    H("AR-01", "B-0141", 670, "jonna", "clear"),
    H("AR-03", "B-0133", 670, "jonna", "slightly cloudy, even", shaken=True),
    H("AR-05", "B-0211", 640, "tibor", "two fingers of oil on top, even after an hour of rolling", shaken=True),
    H("AR-06", "B-0219", 640, "tibor", "grey sediment, even after shaking", shaken=True),
    H("AR-09", "B-0244", 560, "nadia", "clear"),
    H("AR-10", "B-0251", 560, "peer", "clear"),
    H("AR-12", "B-0270", 505, "lena", "clear, very thick; warmed to 40 °C to pour", warmed=True),
    H("AR-13", "B-0277", 470, "ayo", "opaque white, sediment; nobody shook it before the first cups", shaken=False),
    H("AR-14", "B-0283", 470, "ayo", "hazy, even after rolling", shaken=True),
    H("AR-16", "B-0296", 240, "ruth", "sediment, even after shaking", shaken=True),
)
# fmt: on
