from django.core.management.base import BaseCommand, CommandParser

from trials.management.measuring import measure


class Command(BaseCommand):
    help = "Time the judgement beside SciPy's own calls (best of several; ratios travel, milliseconds do not)."

    def add_arguments(self, parser: CommandParser) -> None:
        parser.add_argument("--repeats", type=int, default=5)

    def handle(self, *args: object, repeats: int, **options: object) -> None:
        for one in measure(max(1, repeats)):
            self.stdout.write(
                f"{one.what}: {one.ours_ms:.1f} ms; SciPy {one.scipy_ms:.1f} ms; "
                f"ratio {one.ours_ms / one.scipy_ms:.2f}"
            )
