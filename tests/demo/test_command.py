import subprocess
import sys
from io import StringIO

import pytest
from django.conf import settings as labbook
from django.core.management import CommandError, call_command

from tests.demo.conftest import QUICK, UNTIL
from trials.models import Base, Person


@pytest.mark.django_db
def test_command_fills_once_and_says_what_it_did(settings):
    settings.PASSWORD_HASHERS = QUICK
    printed = StringIO()
    call_command("fill_demo", until=UNTIL, series=["ef-1"], stdout=printed)
    lines = printed.getvalue().splitlines()
    assert lines[0].startswith(f"{Person.objects.count()} people (")
    assert lines[-1].startswith("That took ")
    with pytest.raises(CommandError, match="empty notebook only"):
        call_command("fill_demo", stdout=printed)
    assert Base.objects.count() == 7


def test_sign_ins_are_known_without_django():
    code = "import sys; sys.modules['django'] = None; from trials.demo.sign_ins import SIGN_INS; print(len(SIGN_INS))"
    told = subprocess.run([sys.executable, "-c", code], cwd=labbook.ROOT, capture_output=True, text=True, check=True)
    assert told.stdout == "4\n"
