"""The functions that seal the history, owned by the owner of the tables.

A seal covers the events of transactions from ``from_xid`` up to, not including, ``to_xid``: the oldest transaction
still open when it is made. No event can later appear in a span that is sealed, so spans leave neither gap nor overlap.
Rows enter as JSON without nulls, in UTC: a column added later leaves the digests of old rows as they were.
"""

from django.db import migrations

SEALS = """
CREATE FUNCTION trials_span_digest(from_xid bigint, to_xid bigint, OUT events bigint, OUT digest bytea)
LANGUAGE plpgsql STABLE SET search_path = public, pg_temp SET timezone = 'UTC' SET datestyle = 'ISO' AS $$
DECLARE
    history name;
    found bigint;
    part bytea;
BEGIN
    events := 0;
    digest := sha256(''::bytea);
    FOR history IN
        SELECT c.relname FROM pg_class c JOIN pg_attribute a ON a.attrelid = c.oid
        WHERE c.relkind = 'r' AND c.relnamespace = 'public'::regnamespace
            AND a.attname = 'pgh_xid' AND NOT a.attisdropped
        ORDER BY c.relname COLLATE "C"
    LOOP
        EXECUTE format(
            'SELECT count(*), sha256(coalesce(string_agg('
            'sha256(convert_to(jsonb_strip_nulls(to_jsonb(e))::text, ''UTF8'')), ''''::bytea'
            ' ORDER BY e.pgh_xid, e.pgh_id), ''''::bytea))'
            ' FROM %I e WHERE e.pgh_xid >= $1 AND e.pgh_xid < $2', history)
            INTO found, part USING from_xid, to_xid;
        IF found > 0 THEN
            events := events + found;
            digest := sha256(digest || convert_to(history || ':' || found || ':', 'UTF8') || part);
        END IF;
    END LOOP;
END $$;

CREATE FUNCTION trials_seal_digest(previous text, from_xid bigint, to_xid bigint, events bigint, span bytea)
RETURNS text LANGUAGE sql IMMUTABLE AS $$
    SELECT encode(sha256(convert_to(previous || ':' || from_xid || ':' || to_xid || ':' || events || ':', 'UTF8')
                         || span), 'hex')
$$;

CREATE FUNCTION trials_seal_history() RETURNS text
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
DECLARE
    sealed_to bigint;
    head text;
    until bigint;
    span record;
    made text;
BEGIN
    PERFORM pg_advisory_xact_lock(7246001);
    SELECT s.to_xid, s.digest INTO sealed_to, head FROM trials_seal s ORDER BY s.id DESC LIMIT 1;
    sealed_to := coalesce(sealed_to, 0);
    head := coalesce(head, repeat('0', 64));
    until := pg_snapshot_xmin(pg_current_snapshot())::text::bigint;
    IF until <= sealed_to THEN
        RETURN head;
    END IF;
    SELECT * INTO span FROM trials_span_digest(sealed_to, until);
    IF span.events = 0 THEN
        RETURN head;
    END IF;
    made := trials_seal_digest(head, sealed_to, until, span.events, span.digest);
    INSERT INTO trials_seal (sealed_at, from_xid, to_xid, events, previous, digest)
        VALUES (clock_timestamp(), sealed_to, until, span.events, head, made);
    RETURN made;
END $$;
"""

UNDO = """
DROP FUNCTION trials_seal_history();
DROP FUNCTION trials_seal_digest(text, bigint, bigint, bigint, bytea);
DROP FUNCTION trials_span_digest(bigint, bigint);
"""


class Migration(migrations.Migration):
    dependencies = [("trials", "0002_triggers")]
    operations = [migrations.RunSQL(SEALS, UNDO)]
