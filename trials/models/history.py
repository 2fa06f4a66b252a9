"""History on every table: who wrote what, when and in which request, append-only and unconditional.

pghistory's triggers obey a session setting (``pgtrigger.ignore``) which any session may set. Ours are compiled
from a template without it, and run as the owner of the tables, so that the application role needs no right to
write history and has none.
"""

import pghistory
import pghistory.trigger
import pgtrigger
from django.contrib.postgres.indexes import BrinIndex
from django.db import models
from pgtrigger import compiler


class UnconditionalSql(compiler.UpsertTriggerSql):
    """The SQL of a trigger that no session can switch off."""

    def get_template(self) -> str:
        return """
            CREATE OR REPLACE FUNCTION {pgid}()
            RETURNS TRIGGER AS $$
                {declare}
                BEGIN
                    {func}
                END;
            $$ LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp;

            DROP TRIGGER IF EXISTS {pgid} ON {table};
            CREATE {constraint} TRIGGER {pgid}
                {when} {operation} ON {table}
                {timing}
                {referencing}
                FOR EACH {level} {condition}
                EXECUTE PROCEDURE {execute};

            COMMENT ON TRIGGER {pgid} ON {table} IS '{hash}';
        """


class Unconditional:
    """Mixed into a trigger: compile it from the template above."""

    def compile(self, model):
        return compiler.Trigger(
            name=self.name,
            sql=UnconditionalSql(
                pgid=self.get_pgid(model),
                declare=self.render_declare(model),
                func=self.render_func(model),
                table=model._meta.db_table,
                constraint="CONSTRAINT" if self.timing else "",
                when=self.when,
                operation=self.operation,
                timing=f"DEFERRABLE INITIALLY {self.timing}" if self.timing else "",
                referencing=self.referencing or "",
                level=self.level,
                condition=self.render_condition(model),
                execute=self.render_execute(model),
            ),
        )


class Guard(Unconditional, pgtrigger.Trigger):
    """A trigger that refuses; ``name`` is what the error carries as its constraint."""


def refusal(name: str, message: str) -> str:
    """PL/pgSQL that refuses as a named check would, so that Django raises ``IntegrityError``."""
    return f"RAISE EXCEPTION '{message}' USING ERRCODE = 'check_violation', CONSTRAINT = '{name}';"


def guard(name: str, message: str, *, operation, when=pgtrigger.Before, condition=None, level=pgtrigger.Row):
    """A guard that refuses every row its condition picks."""
    return Guard(
        name=name,
        operation=operation,
        when=when,
        condition=condition,
        level=level,
        func=refusal(name, message),
    )


class CurrentTransaction(models.Func):
    """The transaction that writes, as a number: what a seal counts events by."""

    template = "(pg_current_xact_id()::text)::bigint"
    output_field = models.BigIntegerField()


class _EventTrigger(Unconditional, pghistory.trigger.Event):
    pass


class _Tracked:
    """Mixed into pghistory's trackers, so that the trigger they register is the unconditional one."""

    def add_event_trigger(self, event_model):
        pgtrigger.register(
            _EventTrigger(
                event_model=event_model,
                label=self.label,
                name=self.trigger_name,
                row=self.row,
                operation=self.operation,
                condition=self.condition,
                level=pgtrigger.Row,
            )
        )(event_model.pgh_tracked_model)


class InsertEvent(_Tracked, pghistory.InsertEvent):
    pass


class UpdateEvent(_Tracked, pghistory.UpdateEvent):
    pass


class DeleteEvent(_Tracked, pghistory.DeleteEvent):
    pass


def recorded(*, exclude: tuple[str, ...] = (), obj_field=pghistory.constants.UNSET):
    """Class decorator: every insert, update and delete of the model becomes an event row.

    ``exclude`` names columns that are derived (search text) or must never be copied (password hashes).
    """

    def track(model):
        name = f"{model._meta.object_name}Event"
        pghistory.track(
            InsertEvent(),
            UpdateEvent(),
            DeleteEvent(),
            exclude=list(exclude),
            obj_field=obj_field,
            model_name=name,
            attrs={"pgh_xid": models.BigIntegerField(db_default=CurrentTransaction(), editable=False)},
            meta={
                "indexes": [BrinIndex(fields=["pgh_xid"], name=f"{name.lower()[:26]}_xid", pages_per_range=16)],
                "triggers": [
                    guard(
                        "append_only",
                        "history is append-only",
                        operation=pgtrigger.Update | pgtrigger.Delete,
                    ),
                    guard(
                        "keep_all",
                        "history is append-only",
                        operation=pgtrigger.Truncate,
                        level=pgtrigger.Statement,
                    ),
                ],
            },
        )(model)
        return model

    return track


def history_models() -> list[type[models.Model]]:
    """The event models, in the order of their table names."""
    return sorted(pghistory.core.event_models(include_missing_pgh_obj=True), key=lambda m: m._meta.db_table)
