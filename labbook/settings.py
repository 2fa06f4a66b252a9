"""Settings, all from the environment; without any, the notebook in ``data/`` that ``manage.py up`` keeps."""

from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
SECRET_KEY = "placeholder"
INSTALLED_APPS = ["trials"]
USE_TZ = True
