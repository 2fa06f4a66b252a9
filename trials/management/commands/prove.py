from django.core.management.base import BaseCommand, CommandError

from trials.models import Seal
from trials.queries.proof import doubts, unsealed_events


class Command(BaseCommand):
    help = "Compare every row with its history, and the history with its seals."

    def handle(self, *args, **options):
        found = 0
        for doubt in doubts():
            found += 1
            self.stdout.write(f"{doubt.table} {doubt.row}: {doubt.what}")
        last = Seal.objects.order_by("-id").first()
        if last:
            self.stdout.write(
                f"{last.id} seals; the last, of {last.sealed_at:%Y-%m-%d %H:%M:%S} UTC, is {last.digest}"
            )
        self.stdout.write(f"{unsealed_events()} events since are not sealed yet.")
        if found:
            raise CommandError(f"{found} doubts: the record is not as it was written.", returncode=1)
        self.stdout.write("Every row is as its history says, and the history as its seals say.")
