"""Bring the database and the static files up to this version; run as the owner, by ``up`` before it serves."""

import json
import os

from django.core.management import call_command
from django.core.management.base import BaseCommand

from labbook.static_files import collect_changed
from trials.models import Person
from trials.operations.rights import grant_rights


class Command(BaseCommand):
    help = "Migrate, make the cache table, grant the application role its rights, collect the static files."

    def handle(self, *args, **options):
        call_command("migrate", verbosity=0)
        call_command("createcachetable", verbosity=0)
        role = os.environ.get("LABBOOK_APPLICATION_ROLE")
        if role:
            grant_rights(role=role)
        collect_changed()
        self.stdout.write(json.dumps({"people": Person.objects.count()}))
