import os
import sys

from django.core.management.base import BaseCommand

from labbook.database import data_folder
from labbook.server import supervisor
from labbook.server.errors import CannotStartError


class Command(BaseCommand):
    help = "Run the notebook on this machine: its database, its pages, until Ctrl-C."
    requires_system_checks = []

    def add_arguments(self, parser):
        parser.add_argument("--demo", action="store_true", help="fill an empty notebook with an invented laboratory")
        parser.add_argument("--host", default="127.0.0.1", help="address to listen on (default: this machine alone)")
        parser.add_argument("--port", type=int, default=8000)
        parser.add_argument("--data", help="folder for all that is kept (default: LABBOOK_DATA, else data/)")

    def handle(self, *, demo, host, port, data, **_options):
        if data:
            os.environ["LABBOOK_DATA"] = data
        wanted = supervisor.Wanted(data=data_folder(), host=host, port=port, demo=demo)
        try:
            supervisor.run(wanted, say=self.say, announce=lambda: self.announce(wanted))
        except CannotStartError as error:
            self.stderr.write(str(error))
            sys.exit(2)

    def say(self, line: str) -> None:
        self.stdout.write(line)
        self.stdout.flush()

    def announce(self, wanted: supervisor.Wanted) -> None:
        self.say(f"The notebook is at {supervisor.address(wanted.host, wanted.port)} (Ctrl-C ends it).")
        if not wanted.demo:
            return
        if not supervisor.is_loopback(wanted.host):
            self.say("The demonstration's passwords are public: let nobody reach this address whom you do not know.")
            return
        from trials.demo.sign_ins import SIGN_INS  # noqa: PLC0415 - the demonstration is loaded only when asked for

        for role, sign_in, password in SIGN_INS:
            self.say(f"  {role:<14} {sign_in:<14} {password}")
