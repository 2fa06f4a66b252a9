import os

from django.core.management.base import BaseCommand, CommandError

from trials.operations.acting import Refused
from trials.operations.people import first_person


class Command(BaseCommand):
    help = "Add the first administrator from LABBOOK_ADMIN_SIGN_IN, LABBOOK_ADMIN_NAME, LABBOOK_ADMIN_PASSWORD."

    def handle(self, *args, **options):
        given = {
            "sign_in_name": os.environ.get("LABBOOK_ADMIN_SIGN_IN", ""),
            "full_name": os.environ.get("LABBOOK_ADMIN_NAME", ""),
            "password": os.environ.get("LABBOOK_ADMIN_PASSWORD", ""),
        }
        empty = [name for name, value in given.items() if not value.strip()]
        if empty:
            raise CommandError(f"Nothing given for {', '.join(empty)}.", returncode=2)
        try:
            person = first_person(**given)
        except Refused as refusal:
            raise CommandError(refusal.message, returncode=2) from refusal
        self.stdout.write(f"{person.full_name} can sign in as {person.sign_in_name}.")
