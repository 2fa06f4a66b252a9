import pytest


@pytest.fixture(autouse=True)
def _plain_static(settings):
    """Parts are rendered without collected files; that the collected ones exist is the deployment's own check."""
    settings.STORAGES = settings.STORAGES | {
        "staticfiles": {"BACKEND": "django.contrib.staticfiles.storage.StaticFilesStorage"}
    }
