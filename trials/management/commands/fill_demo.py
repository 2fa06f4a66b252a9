import time
from datetime import date

from django.core.management.base import BaseCommand, CommandError
from django.utils import timezone

from trials.demo.fill import fill
from trials.operations.acting import Refused


class Command(BaseCommand):
    help = "Fill an empty notebook with an invented laboratory."

    def add_arguments(self, parser):
        parser.add_argument(
            "--until",
            type=date.fromisoformat,
            help="the day that its two years end on, as 2026-03-02 (default: today)",
        )

        parser.add_argument("--series", nargs="*", default=(), help="only these series, as ef-1 uf-7 (default: all)")

    def handle(self, *, until, series, **_options):
        started = time.monotonic()
        try:
            fill(until=until or timezone.localdate(), say=self.stdout.write, series=series)
        except Refused as refusal:
            raise CommandError(
                f"The demonstration fills an empty notebook only. {refusal.message}", returncode=2
            ) from refusal
        except ValueError as error:
            raise CommandError(str(error), returncode=2) from error
        self.stdout.write(f"That took {time.monotonic() - started:.1f} s.")
