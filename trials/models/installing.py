"""Installing many triggers in one migration operation.

One operation for each trigger would have Django render the models anew some two hundred times; all at once they cost
one rendering. Later migrations, written by ``makemigrations``, add theirs one by one on top.
"""

from django.db.migrations.operations.base import Operation
from pgtrigger.compiler import Trigger


class AddTriggers(Operation):
    """``triggers``: pairs of model name and compiled trigger."""

    reversible = True

    def __init__(self, triggers: list[tuple[str, Trigger]]):
        self.triggers = triggers

    def state_forwards(self, app_label, state):
        for model, trigger in self.triggers:
            options = state.models[app_label, model].options
            options["triggers"] = [*options.get("triggers", []), trigger]
        state.clear_delayed_apps_cache()

    def database_forwards(self, app_label, schema_editor, from_state, to_state):
        for _, trigger in self.triggers:
            schema_editor.execute(trigger.install_sql, params=None)

    def database_backwards(self, app_label, schema_editor, from_state, to_state):
        for _, trigger in self.triggers:
            schema_editor.execute(trigger.uninstall_sql, params=None)

    def describe(self):
        return f"Create {len(self.triggers)} triggers"

    def deconstruct(self):
        return self.__class__.__name__, [], {"triggers": self.triggers}
