"""Series on customers' systems as sold, and on the tank coating that only named people see."""

from .round_rows import CALM_BLANKS, STORED, RoundRow

R = RoundRow

# fmt: off
ROUNDS = (
    R("bb-1", 388, "BB-61", 1, "scout", "jonna", ("jonna", "nadia"),
      "Hallsby's floor as sold: is there room for more?",
      "It may hold a defoamer already. What do four candidates add at 3 mm?",
      "AR-09 0.2 | AR-11 0.4 | AR-14 0.6 | AR-04 0.3", grams="300", enquiry="hallsby"),
    R("bb-2", 360, "BB-61", 1, "ladder", "jonna", ("jonna", "lena"), "AR-09 and AR-14 on top of Hallsby's own",
      "Window on top of whatever is in it; component A only is ours to change.",
      "AR-09 0.1 0.2 0.4 0.6 | AR-14 0.3 0.6 1.0 1.5", follows="bb-1", enquiry="hallsby", basis="component"),
    R("bb-3", 82, "BB-61", 2, "complaint", "ruth", ("ruth", "tibor"), "Complaint: bubbles since the new batches",
      "The floor of last autumn was good, the one of this winter is not. Their batch, or our additive?",
      "AR-09 0.2 0.4 | AR-14 0.6", incumbent="AR-04 0.3", follows="bb-2", enquiry="complaint",
      twists=(CALM_BLANKS,)),
    R("bb-4", 37, "BB-61", 2, "confirm", "ruth", ("ruth", "lena"), "Hallsby's new batches, done properly",
      "The same question with blanks stirred as the rest, fresh and stored.",
      "AR-09 0.4 | AR-14 0.8", incumbent="AR-04 0.3", follows="bb-3", enquiry="complaint", twists=(STORED,),
      replicates=3,
      grams="700"),
    R("em-1", 248, "EM-52", 1, "scout", "caspar", ("tibor", "ruth"), "Tank coating sprayed: pinholes after flash-off",
      "Air or solvent? Six candidates in the spray coat at 250 µm.",
      "AR-01 0.5 | AR-03 0.3 | AR-09 0.3 | AR-10 0.1 | AR-11 0.5 | AR-02 0.6", grams="400", enquiry="tank",
      tint="red"),
    R("em-2", 222, "EM-52", 1, "ladder", "tibor", ("tibor", "ruth"), "AR-11 and AR-16 in the tank coating",
      "Window of the two best, sprayed with the same nozzle.",
      "AR-11 0.2 0.4 0.8 | AR-16 0.2 0.5 0.9 1.2", incumbent="AR-03 0.3", follows="em-1", enquiry="tank",
      tint="red"),
    R("em-3", 23, "EM-52", 1, "confirm", "tibor", ("tibor", "ruth"), "Tank coating from stored tins",
      "Fortnight in the oven, blank beside it.",
      "AR-11 0.6 | AR-16 0.5", follows="em-2", enquiry="tank", twists=(STORED,), grams="700", tint="red"),
)
# fmt: on
