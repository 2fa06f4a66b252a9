"""The words of every trial in a table of their own, kept by triggers whoever writes: pages, COPY or plain SQL.

The functions belong to the owner of the tables, so that the application role needs no right to write here. Words are
folded before they are parsed, in the record and in what is asked alike: umlauts to two letters (German practice),
other accents dropped, a decimal comma to a point, and a code such as AR-01 or 417-5 to one word, which the parser
would else take for a word and a negative number.
"""

from django.db import migrations

LANGUAGE = """
CREATE TEXT SEARCH CONFIGURATION labbook (COPY = pg_catalog.english);

CREATE FUNCTION trials_folded(said text) RETURNS text
LANGUAGE plpgsql IMMUTABLE STRICT PARALLEL SAFE SET search_path = pg_catalog, pg_temp AS $$
DECLARE
    plain text := normalize(said, NFC);
    pair text[];
BEGIN
    FOREACH pair SLICE 1 IN ARRAY ARRAY[
        ['ä', 'ae'], ['ö', 'oe'], ['ü', 'ue'], ['Ä', 'ae'], ['Ö', 'oe'], ['Ü', 'ue'],
        ['ß', 'ss'], ['ẞ', 'ss'], ['æ', 'ae'], ['Æ', 'ae'], ['ø', 'oe'], ['Ø', 'oe']]
    LOOP
        plain := replace(plain, pair[1], pair[2]);
    END LOOP;
    plain := lower(regexp_replace(normalize(plain, NFD), '[\\u0300-\\u036f]', '', 'g'));
    -- Angle brackets would be taken for tags, and what stands between them dropped.
    plain := regexp_replace(translate(plain, '<>µ‐‑', '()μ--'), '[“”„‟]', '"', 'g');
    plain := regexp_replace(plain, '([0-9]),([0-9])', '\\1.\\2', 'g');
    plain := regexp_replace(plain, '([0-9])-([0-9])', '\\1x\\2', 'g');
    RETURN regexp_replace(plain, '([a-z0-9]+)-([a-z0-9]*[0-9])', '\\1\\2', 'g');
END $$;
"""

REFRESH = """
CREATE FUNCTION trials_search_refresh(wanted bigint[]) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
BEGIN
    -- Whoever else writes about these trials is waited for first; the statement after this one then sees it. In one
    -- order, so that nobody waits for each other.
    PERFORM 1 FROM trials_trialsearch x WHERE x.trial_id = ANY (wanted) ORDER BY x.trial_id FOR UPDATE;
    DELETE FROM trials_trialsearch x
        WHERE x.trial_id = ANY (wanted) AND NOT EXISTS (SELECT 1 FROM trials_trial t WHERE t.id = x.trial_id);
    INSERT INTO trials_trialsearch AS x (trial_id, series_id, at, tsv)
        SELECT t.id, t.series_id, coalesce(t.made_at, s.planned_at),
            setweight(to_tsvector('public.labbook', trials_folded(concat_ws(E'\\n', s.title, t.lesson, s.lesson))), 'A')
            || setweight(to_tsvector('public.labbook', trials_folded(concat_ws(E'\\n',
                s.question, t.remark, t.unfair_because, s.conclusion, s.not_tested,
                (SELECT string_agg(concat_ws(': ', f.mode, f.how, f.cause), E'\\n' ORDER BY f.id)
                    FROM trials_failure f WHERE f.trial_id = t.id)))), 'B')
            || setweight(to_tsvector('public.labbook', trials_folded(concat_ws(E'\\n',
                t.code, 'series ' || s.number, b.code, b.name,
                made_by.full_name, made_by.initials, kept_by.full_name, kept_by.initials,
                (SELECT string_agg(concat_ws(' ', m.code, m.name), E'\\n' ORDER BY d.id)
                    FROM trials_dosage d JOIN trials_candidate c ON c.id = d.candidate_id
                    JOIN trials_rawmaterial m ON m.id = c.material_id WHERE d.trial_id = t.id),
                (SELECT string_agg(p.code, ' ' ORDER BY p.id)
                    FROM trials_panel p WHERE p.trial_id = t.id)))), 'C')
        FROM trials_trial t
        JOIN trials_series s ON s.id = t.series_id
        JOIN trials_revision r ON r.id = s.revision_id
        JOIN trials_base b ON b.id = r.base_id
        JOIN trials_person kept_by ON kept_by.id = s.owner_id
        LEFT JOIN trials_person made_by ON made_by.id = t.made_by_id
        WHERE t.id = ANY (wanted)
        ORDER BY t.id
    ON CONFLICT (trial_id) DO UPDATE
        SET series_id = excluded.series_id, at = excluded.at, tsv = excluded.tsv
        WHERE (x.series_id, x.at, x.tsv) IS DISTINCT FROM (excluded.series_id, excluded.at, excluded.tsv);
END $$;
"""

# Table: the columns that are searched or lead to a trial, and the trials of a row. Of the tables that a trial
# can't be without, or that are there before it, only an update matters.
EVERY, UPDATE = ("INSERT", "UPDATE", "DELETE"), ("UPDATE",)
SOURCES = {
    "trial": (
        EVERY, "id, code, series_id, made_by_id, made_at, remark, unfair_because, lesson", "SELECT row.id FROM {rows} row",
    ),
    "dosage": (EVERY, "trial_id, candidate_id", "SELECT row.trial_id FROM {rows} row"),
    "failure": (EVERY, "trial_id, mode, how, cause", "SELECT row.trial_id FROM {rows} row"),
    "panel": (EVERY, "trial_id, code", "SELECT row.trial_id FROM {rows} row"),
    "series": (
        UPDATE, "id, number, title, question, conclusion, lesson, not_tested, revision_id, owner_id, planned_at",
        "SELECT t.id FROM {rows} row JOIN trials_trial t ON t.series_id = row.id",
    ),
    "revision": (
        UPDATE, "id, base_id",
        "SELECT t.id FROM {rows} row JOIN trials_series s ON s.revision_id = row.id"
        " JOIN trials_trial t ON t.series_id = s.id",
    ),
    "base": (
        UPDATE, "id, code, name",
        "SELECT t.id FROM {rows} row JOIN trials_revision r ON r.base_id = row.id"
        " JOIN trials_series s ON s.revision_id = r.id JOIN trials_trial t ON t.series_id = s.id",
    ),
    "candidate": (
        UPDATE, "id, material_id", "SELECT d.trial_id FROM {rows} row JOIN trials_dosage d ON d.candidate_id = row.id",
    ),
    "rawmaterial": (
        UPDATE, "id, code, name",
        "SELECT d.trial_id FROM {rows} row JOIN trials_candidate c ON c.material_id = row.id"
        " JOIN trials_dosage d ON d.candidate_id = c.id",
    ),
    "person": (
        UPDATE, "id, full_name, initials",
        "SELECT t.id FROM {rows} row JOIN trials_trial t ON t.made_by_id = row.id"
        " UNION SELECT t.id FROM {rows} row JOIN trials_series s ON s.owner_id = row.id"
        " JOIN trials_trial t ON t.series_id = s.id",
    ),
}  # fmt: skip
TABLES = {"INSERT": "NEW TABLE AS new_rows", "DELETE": "OLD TABLE AS old_rows"}
TABLES["UPDATE"] = f"{TABLES['DELETE']} {TABLES['INSERT']}"


def kept(table: str) -> str:
    """The trigger function of a table and its triggers: one call for each statement, however many rows it wrote."""
    events, columns, trials = SOURCES[table]
    # A row that was written again as it was, or in other columns, costs nothing.
    changed = (
        f"((SELECT {columns} FROM new_rows EXCEPT SELECT {columns} FROM old_rows)"
        f" UNION ALL (SELECT {columns} FROM old_rows EXCEPT SELECT {columns} FROM new_rows))"
    )
    return f"""
CREATE FUNCTION trials_search_{table}() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
DECLARE
    wanted bigint[];
BEGIN
    IF TG_OP = 'INSERT' THEN
        wanted := ARRAY({trials.format(rows="new_rows")});
    ELSIF TG_OP = 'DELETE' THEN
        wanted := ARRAY({trials.format(rows="old_rows")});
    ELSE
        wanted := ARRAY({trials.format(rows=changed)});
    END IF;
    IF wanted <> '{{}}' THEN
        PERFORM trials_search_refresh(wanted);
    END IF;
    RETURN NULL;
END $$;
""" + "".join(
        f"CREATE TRIGGER search_after_{event.lower()} AFTER {event} ON trials_{table}"
        f" REFERENCING {TABLES[event]} FOR EACH STATEMENT EXECUTE FUNCTION trials_search_{table}();\n"
        for event in events
    )


def dropped(table: str) -> str:
    return f"DROP FUNCTION trials_search_{table}() CASCADE;"


FILL = "SELECT trials_search_refresh(ARRAY(SELECT id FROM trials_trial));"


class Migration(migrations.Migration):
    dependencies = [("trials", "0005_criteria")]
    operations = [
        migrations.RunSQL(LANGUAGE, "DROP FUNCTION trials_folded(text); DROP TEXT SEARCH CONFIGURATION labbook;"),
        migrations.RunSQL(REFRESH, "DROP FUNCTION trials_search_refresh(bigint[]);"),
        *(migrations.RunSQL(kept(table), dropped(table)) for table in SOURCES),
        migrations.RunSQL(FILL, migrations.RunSQL.noop),
    ]
