"""The database of a notebook that is not running: settings load, checks run, connecting says why not."""

import psycopg
from django.db.backends.postgresql import base


class DatabaseWrapper(base.DatabaseWrapper):
    def get_new_connection(self, conn_params):
        raise psycopg.OperationalError(self.settings_dict["WHY_ABSENT"])
