"""Papers on file. What a supplier states is noted as the supplier's; nothing here is a verdict.

Days count back from the one that the demonstration ends on; below 0 lies ahead.
"""

from typing import NamedTuple


class PaperRow(NamedTuple):
    code: str
    subject: str
    title: str
    region: str
    issued: int
    expires: int | None
    says: str
    by: str


P = PaperRow

# fmt: off
PAPERS = (
    P("AR-01", "food contact", "Supplier's letter on food contact", "EU", 640, 275, "Monomers listed, with limits; no"
      " migration figures.", "maren"),
    P("AR-01", "emissions", "Emission test of the additive in an epoxy floor, 28 days", "EU", 300, -795, "Nothing"
      " above 5 µg/m³ at 0.5 %.", "maren"),
    P("AR-02", "food contact", "Supplier's letter on food contact", "EU", 330, -35, "Monomers listed, with limits.",
      "maren"),
    P("AR-02", "food contact", "Supplier's letter on food contact", "US", 330, -400, "Listed for coatings, with a"
      " limit on the dosage.", "maren"),
    P("AR-02", "mineral oil", "Statement on mineral oil hydrocarbons", "EU", 500, None, "None added on purpose.",
      "caspar"),
    P("AR-03", "cyclic siloxanes", "Analysis of cyclic siloxanes", "EU", 410, -320, "D4, D5 and D6 each below 0.1 %.",
      "caspar"),
    P("AR-04", "cyclic siloxanes", "Analysis of cyclic siloxanes", "EU", 760, 30, "D4 below 0.1 %; D5 and D6 not"
      " reported.", "caspar"),
    P("AR-04", "emissions", "Statement on volatile and semi-volatile content", "EU", 520, -210, "Plasticiser above"
      " 250 °C; no figures.", "maren"),
    P("AR-06", "mineral oil", "Composition of the oil", "EU", 450, -280, "Paraffinic; aromatics below 0.1 %.",
      "tibor"),
    P("AR-07", "emissions", "Emission test of the additive in a polyurethane floor, 28 days", "EU", 340, -25,
      "Nothing found at 1.0 %.", "maren"),
    P("AR-08", "cyclic siloxanes", "Analysis of cyclic siloxanes", "EU", 390, -340, "D4 0.03 %, D5 0.08 %, D6"
      " 0.05 %.", "caspar"),
    P("AR-09", "cyclic siloxanes", "Analysis of cyclic siloxanes", "EU", 360, -5, "D4, D5 and D6 each below 0.1 %.",
      "caspar"),
    P("AR-09", "emissions", "Emission test of the additive in an epoxy floor, 28 days", "EU", 360, -735, "Siloxanes"
      " below 10 µg/m³ at 0.4 %.", "maren"),
    P("AR-09", "food contact", "Answer to our question on food contact", "EU", 200, None, "The supplier gives none.",
      "maren"),
    P("AR-10", "other", "Statement on fluorinated substances", "EU", 560, 10, "Short chains; the supplier expects a"
      " restriction.", "caspar"),
    P("AR-12", "cyclic siloxanes", "Analysis of cyclic siloxanes", "EU", 700, -30, "D4 and D5 below 0.1 %, D6 0.4 %.",
      "caspar"),
    P("AR-12", "food contact", "Supplier's letter on food contact", "US", 510, -220, "Listed, with a limit on the"
      " dosage.", "maren"),
    P("AR-14", "food contact", "Supplier's letter on food contact", "EU", 470, -260, "Monomers listed, with limits.",
      "maren"),
    P("AR-15", "other", "Statement on fluorinated substances", "EU", 240, -490, "Contains one; use and region to be"
      " asked before samples leave.", "ruth"),
    P("AR-16", "emissions", "Statement on volatile content", "EU", 240, -120, "VOC as on the data sheet.", "ruth"),
    P("EP-104", "safety data sheet", "Safety data sheet, version 7", "EU", 410, None, "", "lena"),
    P("HD-210", "safety data sheet", "Safety data sheet, version 4", "EU", 290, None, "", "jonna"),
    P("NC-401", "safety data sheet", "Safety data sheet, version 11", "EU", 200, None, "Training before use.", "ayo"),
    P("HD-210", "emissions", "Emission test of a floor with this hardener, 28 days", "EU", 560, -170, "Benzyl alcohol"
      " 180 µg/m³.", "maren"),
    P("PO-301", "emissions", "Statement on volatile content", "EU", 480, -250, "No volatile added.", "ayo"),
)
# fmt: on
