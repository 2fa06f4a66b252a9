from django.apps import AppConfig


class TrialsConfig(AppConfig):
    name = "trials"
    default_auto_field = "django.db.models.BigAutoField"
