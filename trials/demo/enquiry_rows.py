"""What invented customers asked, with their limits and what they use today."""

from typing import NamedTuple


class EnquiryRow(NamedTuple):
    """Days count back. ``limits``: criterion, limit, and ``should`` where it is no must; divided by |."""

    key: str
    received: int
    due: int
    closed: int | None
    by: str
    customer: str
    subject: str
    field: str
    base: str
    film_um: str
    asked: str
    incumbent: str = ""
    note: str = ""
    limits: str = ""
    withheld: bool = False
    shared: tuple[str, ...] | None = None


E = EnquiryRow

# fmt: off
ENQUIRIES = (
    E("tables", 630, 560, 425, "maren", "Dorrowfield Tables", "Clear casting resin for table tops, 10 mm",
      "casting resin",
      "EC-12", "10000", "Bubbles along the wood and in the corners. The cast lies over black: no cloud is taken. The"
      " customer pours by hand from a bucket.", note="nothing, a gas flame after pouring",
      limits="bubble-count 16 | haze 1 | craters 0.5"),
    E("warehouse", 600, 520, 455, "maren", "Kestrelby Logistics", "Epoxy floor for a warehouse, bubbles at the edges",
      "floor", "EF-21", "2000", "Two coats a day apart, 2 mm in all. What he uses today is cloudy in the tin after a"
      " summer in the container.", incumbent="AR-02 0.6", limits="bubble-count 14 | crawling 1 | craters 1"),
    E("school", 592, 500, 300, "caspar", "Ovanholm Schools", "Polyurethane floor: bubbles after half an hour",
      "floor",
      "UF-33", "2000", "Poured in the morning, fine; full of bubbles by lunch. Worse on damp days.",
      limits="bubble-count 14 | levelling 2 should"),
    E("garage", 512, 440, 395, "maren", "Trennick Garages", "Polyaspartic top coat by roller, white", "floor",
      "PF-41",
      "300", "Two coats in one day. White must stay white.", incumbent="AR-02 0.6",
      limits="bubble-count 50 | crawling 1 | yellowing 1 should"),
    E("parking", 430, 330, 262, "caspar", "Sorvang Parking", "Parking deck on concrete, April to October", "floor",
      "EF-21", "2000", "Laid from 10 to 30 °C. Lines are sprayed on a week later: silicone-free if it can be had.",
      incumbent="AR-02 0.8", limits="bubble-count 14 | craters 1 | pinholes 1.5 should"),
    E("hallsby", 398, 340, 352, "maren", "Hallsby Floors", "Their own epoxy floor, better by half", "floor", "BB-61",
      "3000", "Their recipe stays theirs. We may add to A and touch nothing else.", withheld=True,
      note="not told; A foams less than expected", limits="bubble-count 16 | haze 2 should"),
    E("art", 395, 250, 70, "maren", "Lampenau Glass Art",
      "Clear casts, lacquered later: no silicone where it can be avoided",
      "casting resin", "EC-12", "10000", "Casts up to 10 mm, lacquered after a week. Cast in a hall without heating.",
      limits="bubble-count 14 | haze 1 | craters 0.5"),
    E("clinic", 300, 240, 238, "caspar", "Halvorsund Clinic works", "White polyurethane floor with craters", "floor",
      "UF-33", "2000", "White corridor, two coats, craters the size of a pin head all over the second day.",
      incumbent="AR-12 0.1", limits="craters 1 | crawling 1 | bubble-count 14"),
    E("tank", 262, 120, None, "caspar", "Eastquay Shipcare", "Tank coating, pinholes after spraying", "marine",
      "EM-52",
      "250", "Holiday test fails at one spot in three square metres. Project under seal until the launch.",
      incumbent="AR-03 0.3", limits="pinholes 1 | bubble-count 50 should", withheld=True, shared=("tibor", "ruth")),
    E("dairy", 245, 150, 55, "maren", "Lundmere Dairy", "Floor for wet rooms, 4 mm at the drains", "floor", "EF-21",
      "2000", "Washed down with hot water daily. A white sticky film last March was blamed on the additive.",
      incumbent="AR-09 0.4", limits="bubble-count 14 | blush 1 | craters 1"),
    E("balcony", 243, 30, None, "maren", "Osterby Balconies", "Roller coat for balconies, white", "floor", "PF-41",
      "300",
      "Twenty minutes to roll. Tins stand in vans all summer. The plant has a stirrer and no dissolver.",
      incumbent="AR-08 0.2", limits="bubble-count 50 | craters 1"),
    E("sports", 220, 130, 50, "caspar", "Quinlow Sports Floors", "Polyurethane sports floor, 4 mm, green", "floor",
      "UF-33", "4000", "Foam-free at 2 mm with today's additive, never at 4 mm.", incumbent="AR-04 0.4",
      limits="bubble-count 14 | levelling 2"),
    E("coils", 148, 20, None, "maren", "Brunnmark Coils", "Casting resin round coils, 20 mm, black",
      "casting resin", "BB-62",
      "20000", "A bubble of half a millimetre is a breakdown at the test voltage. Vacuum is no option in their line.",
      limits="bubble-count 3"),
    E("complaint", 86, 60, None, "caspar", "Hallsby Floors", "Bubbles in the floor since the new batches", "floor",
      "BB-61", "3000", "Photographs from two sites. They say that nothing was changed.", incumbent="AR-04 0.3",
      limits="bubble-count 16", withheld=True),
    E("cold", 40, -20, None, "maren", "Fjellmark Cold Stores", "Polyurethane floor for a cold store", "floor",
      "UF-33",
      "2000", "Laid warm, used at −25 °C. Price counts.", incumbent="AR-11 0.6",
      limits="bubble-count 14 | craters 1"),
    E("lamps", 31, -14, None, "caspar", "Immerlund Lamps", "Silicone-free clear cast for lamp feet", "casting resin",
      "EC-12", "10000", "Glued with silicone-sensitive tape afterwards. Project not announced yet.",
      limits="bubble-count 14 | haze 1", withheld=True, shared=("nadia", "tibor")),
    E("hospital", 20, -25, None, "maren", "Ravnholt Hospital works", "Grey floor, at a lower price than AR-09",
      "floor",
      "EF-21", "2000", "The floor is good. The purchaser wants ten per cent off the additive.", incumbent="AR-02 0.8",
      limits="bubble-count 14 | craters 1"),
    E("blades", 12, -40, None, "caspar", "Marlund Blades", "Adhesive for blade shells, air at the bond line",
      "adhesive",
      "", "8000", "Two-component epoxy paste, 8 mm bond line, 60 °C cure. Voids seen in the X-ray.",
      note="vacuum mixer at the supplier's"),
    E("terrazzo", 6, -50, None, "maren", "Pellwick Terrazzo", "Epoxy terrazzo, pinholes after grinding", "floor", "",
      "10000", "Pinholes show only after the first grinding. Filled by hand today.",
      note="filling and grinding again"),
    E("bakery", 3, -60, None, "maren", "Gavrin Bakeries", "Food contact papers for a floor additive", "floor",
      "EF-21",
      "2000", "Which of our candidates has a letter on food contact that has not expired?"),
)
# fmt: on
