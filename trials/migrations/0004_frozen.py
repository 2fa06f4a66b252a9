"""The functions that the guards of signed records ask: is it signed, and is this transaction an amendment of it?

An amendment is open from when its signature is written without content until it gets it, in one transaction.
"""

from django.db import migrations

FROZEN = """
CREATE FUNCTION trials_frozen(the_series bigint, the_trial bigint) RETURNS boolean
LANGUAGE sql STABLE SET search_path = public, pg_temp AS $$
    SELECT EXISTS (
        SELECT 1 FROM trials_signature s
        WHERE s.meaning = 'performed' AND (s.series_id = the_series OR s.trial_id = the_trial)
    ) AND NOT EXISTS (
        SELECT 1 FROM trials_signature s
        WHERE s.meaning = 'amended' AND s.digest = '' AND s.xid = (pg_current_xact_id()::text)::bigint
            AND (s.series_id = the_series OR s.trial_id = the_trial)
    )
$$;

CREATE FUNCTION trials_series_frozen(the_series bigint) RETURNS boolean
LANGUAGE sql STABLE SET search_path = public, pg_temp AS $$
    SELECT trials_frozen(the_series, NULL)
$$;

CREATE FUNCTION trials_trial_frozen(the_trial bigint) RETURNS boolean
LANGUAGE sql STABLE SET search_path = public, pg_temp AS $$
    SELECT coalesce((SELECT trials_frozen(t.series_id, t.id) FROM trials_trial t WHERE t.id = the_trial), false)
$$;

CREATE FUNCTION trials_batch_frozen(the_batch bigint) RETURNS boolean
LANGUAGE sql STABLE SET search_path = public, pg_temp AS $$
    SELECT EXISTS (SELECT 1 FROM trials_series s WHERE s.common_batch_id = the_batch AND trials_frozen(s.id, NULL))
        OR EXISTS (
            SELECT 1 FROM trials_trial t WHERE t.common_batch_id = the_batch AND trials_frozen(t.series_id, t.id)
        )
$$;
"""

UNDO = """
DROP FUNCTION trials_batch_frozen(bigint);
DROP FUNCTION trials_trial_frozen(bigint);
DROP FUNCTION trials_series_frozen(bigint);
DROP FUNCTION trials_frozen(bigint, bigint);
"""


class Migration(migrations.Migration):
    dependencies = [("trials", "0003_seals")]
    operations = [migrations.RunSQL(FROZEN, UNDO)]
