import sys
from pathlib import Path

from django.core.management.base import BaseCommand

from labbook.database import data_folder
from labbook.server.carrying import carry_over
from labbook.server.errors import CannotStartError


class Command(BaseCommand):
    help = "Carry the notebook's data over from an older major version of PostgreSQL, with the notebook stopped."
    requires_system_checks = []

    def add_arguments(self, parser):
        parser.add_argument("--old-binaries", type=Path, required=True, help="the bin folder of the older PostgreSQL")
        parser.add_argument("--data", type=Path, help="the notebook's folder (default: LABBOOK_DATA, else data/)")

    def handle(self, *, old_binaries, data, **_options):
        folder = (data or data_folder()).expanduser().absolute()
        try:
            carry_over(folder, old_binaries=old_binaries.absolute(), say=self.stdout.write)
        except CannotStartError as error:
            self.stderr.write(str(error))
            sys.exit(2)
