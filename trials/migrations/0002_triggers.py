import pgtrigger.compiler
import trials.models.history
import trials.models.installing
from django.db import migrations


class Migration(migrations.Migration):
    dependencies = [
        ("trials", "0001_the_record"),
    ]

    operations = [
        trials.models.installing.AddTriggers(
            triggers=[
                (
                    "balance",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_balanceevent" ("id", "name", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "retired", "step_g") VALUES (NEW."id", NEW."name", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."retired", NEW."step_g"); RETURN NULL;',
                            hash="6ba45ebc242d4c96feeacb8f55a961e0e0ee561d",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_368db",
                            table="trials_balance",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "balance",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_balanceevent" ("id", "name", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "retired", "step_g") VALUES (NEW."id", NEW."name", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."retired", NEW."step_g"); RETURN NULL;',
                            hash="c5832978b1dc726de0433bd409996b8445e55d75",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_01df6",
                            table="trials_balance",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "balance",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_balanceevent" ("id", "name", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "retired", "step_g") VALUES (OLD."id", OLD."name", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."retired", OLD."step_g"); RETURN NULL;',
                            hash="a2cfe41230294e1e67d6d1b5aa661f2a5614e254",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_8069e",
                            table="trials_balance",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "balanceevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="bc5a9471e86c916a3aa42c5becb6935d59a00f5c",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_2c62a",
                            table="trials_balanceevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "balanceevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="9e96123865fcfba32ea76877cd195b14588b5c5d",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_67b79",
                            table="trials_balanceevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "base",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_baseevent" ("additive", "additive_note", "chemistry", "code", "field", "film_um", "id", "kind", "name", "owner_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "remarks", "restricted") VALUES (NEW."additive", NEW."additive_note", NEW."chemistry", NEW."code", NEW."field", NEW."film_um", NEW."id", NEW."kind", NEW."name", NEW."owner_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."remarks", NEW."restricted"); RETURN NULL;',
                            hash="bf239780ed9f458bcb74ced94e45cb141ec951b5",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_c7a5d",
                            table="trials_base",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "base",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_baseevent" ("additive", "additive_note", "chemistry", "code", "field", "film_um", "id", "kind", "name", "owner_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "remarks", "restricted") VALUES (NEW."additive", NEW."additive_note", NEW."chemistry", NEW."code", NEW."field", NEW."film_um", NEW."id", NEW."kind", NEW."name", NEW."owner_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."remarks", NEW."restricted"); RETURN NULL;',
                            hash="598845a3385c1a8530760d6340d9b8d65b8dfe28",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_20047",
                            table="trials_base",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "base",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_baseevent" ("additive", "additive_note", "chemistry", "code", "field", "film_um", "id", "kind", "name", "owner_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "remarks", "restricted") VALUES (OLD."additive", OLD."additive_note", OLD."chemistry", OLD."code", OLD."field", OLD."film_um", OLD."id", OLD."kind", OLD."name", OLD."owner_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."remarks", OLD."restricted"); RETURN NULL;',
                            hash="a5527af5cd5613f82adb3bd8a1921324c47590fc",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_91c20",
                            table="trials_base",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "baseevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="a9fba0ac8f5e8720fb7bf2fc777f83df2a8f042c",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_a8e1b",
                            table="trials_baseevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "baseevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="46fa56ddbf373938d5952119e4aaf99b6d4d915f",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_0498a",
                            table="trials_baseevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "baseshare",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_baseshareevent" ("base_id", "id", "person_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id") VALUES (NEW."base_id", NEW."id", NEW."person_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id"); RETURN NULL;',
                            hash="76f21c5ecc52f26ce0b989bc106912e93013a3e3",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_7e7a7",
                            table="trials_baseshare",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "baseshare",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_baseshareevent" ("base_id", "id", "person_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id") VALUES (NEW."base_id", NEW."id", NEW."person_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id"); RETURN NULL;',
                            hash="9787c74b3683b0ca163ffc63d34ed13fa40655ce",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_cdd97",
                            table="trials_baseshare",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "baseshare",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_baseshareevent" ("base_id", "id", "person_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id") VALUES (OLD."base_id", OLD."id", OLD."person_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id"); RETURN NULL;',
                            hash="705ebc72e81ae4289ded027e3a5e7c309b3facb3",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_cb27e",
                            table="trials_baseshare",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "baseshareevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="56ef797a58eee63ccc67a2be2ffd112c256f062a",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_db77c",
                            table="trials_baseshareevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "baseshareevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="f9ef6341962cab50c90060b8bef1329d5cd5ccfe",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_e5148",
                            table="trials_baseshareevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "candidate",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_candidateevent" ("air_release", "carrier", "carrier_pct", "cautions", "chemistry", "diluted_in", "from_pct", "highest_tried_pct", "id", "macro_foam", "material_id", "minutes", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "silicone", "stages", "strength", "tip_speed_m_s", "to_pct") VALUES (NEW."air_release", NEW."carrier", NEW."carrier_pct", NEW."cautions", NEW."chemistry", NEW."diluted_in", NEW."from_pct", NEW."highest_tried_pct", NEW."id", NEW."macro_foam", NEW."material_id", NEW."minutes", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."silicone", NEW."stages", NEW."strength", NEW."tip_speed_m_s", NEW."to_pct"); RETURN NULL;',
                            hash="f075ae9028c12c24f3867138e55e5067c9b9733a",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_36653",
                            table="trials_candidate",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "candidate",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_candidateevent" ("air_release", "carrier", "carrier_pct", "cautions", "chemistry", "diluted_in", "from_pct", "highest_tried_pct", "id", "macro_foam", "material_id", "minutes", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "silicone", "stages", "strength", "tip_speed_m_s", "to_pct") VALUES (NEW."air_release", NEW."carrier", NEW."carrier_pct", NEW."cautions", NEW."chemistry", NEW."diluted_in", NEW."from_pct", NEW."highest_tried_pct", NEW."id", NEW."macro_foam", NEW."material_id", NEW."minutes", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."silicone", NEW."stages", NEW."strength", NEW."tip_speed_m_s", NEW."to_pct"); RETURN NULL;',
                            hash="60411dca9760402ddeb3aa06930d49073dfa8f73",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_a87dc",
                            table="trials_candidate",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "candidate",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_candidateevent" ("air_release", "carrier", "carrier_pct", "cautions", "chemistry", "diluted_in", "from_pct", "highest_tried_pct", "id", "macro_foam", "material_id", "minutes", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "silicone", "stages", "strength", "tip_speed_m_s", "to_pct") VALUES (OLD."air_release", OLD."carrier", OLD."carrier_pct", OLD."cautions", OLD."chemistry", OLD."diluted_in", OLD."from_pct", OLD."highest_tried_pct", OLD."id", OLD."macro_foam", OLD."material_id", OLD."minutes", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."silicone", OLD."stages", OLD."strength", OLD."tip_speed_m_s", OLD."to_pct"); RETURN NULL;',
                            hash="6bc1c985fb93abe6304ce44633a92b4f18a327fb",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_7c69d",
                            table="trials_candidate",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "candidateevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="8f1ec227af6d1d45db2a8d38f0ee89e11d787ce7",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_aeaca",
                            table="trials_candidateevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "candidateevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="1cc5b63fcefbad69239b90437daaa198929f5295",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_b2af4",
                            table="trials_candidateevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "commonbatch",
                    pgtrigger.compiler.Trigger(
                        name="common_batch_frozen",
                        sql=trials.models.history.UnconditionalSql(
                            declare="DECLARE row RECORD;",
                            func="IF TG_OP = 'DELETE' THEN row := OLD; ELSE row := NEW; END IF; IF trials_batch_frozen(row.id) THEN RAISE EXCEPTION 'this is signed: it changes only by an amendment with its reason' USING ERRCODE = 'check_violation', CONSTRAINT = 'common_batch_frozen'; END IF; RETURN row;",
                            hash="394fd0c9c306647d0309bd3a6f5d670ac507c351",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_common_batch_frozen_ab815",
                            table="trials_commonbatch",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "commonbatch",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_commonbatchevent" ("density_g_ml", "id", "letter", "made_at", "made_by_id", "mass_g", "number", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "remarks", "revision_id", "viscosity_mpa_s", "water_pct") VALUES (NEW."density_g_ml", NEW."id", NEW."letter", NEW."made_at", NEW."made_by_id", NEW."mass_g", NEW."number", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."remarks", NEW."revision_id", NEW."viscosity_mpa_s", NEW."water_pct"); RETURN NULL;',
                            hash="98d69469083947c066493e65a54ea73353535531",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_8ad0b",
                            table="trials_commonbatch",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "commonbatch",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_commonbatchevent" ("density_g_ml", "id", "letter", "made_at", "made_by_id", "mass_g", "number", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "remarks", "revision_id", "viscosity_mpa_s", "water_pct") VALUES (NEW."density_g_ml", NEW."id", NEW."letter", NEW."made_at", NEW."made_by_id", NEW."mass_g", NEW."number", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."remarks", NEW."revision_id", NEW."viscosity_mpa_s", NEW."water_pct"); RETURN NULL;',
                            hash="600cc1df1566e572ce643f14496a900d7b8d6b89",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_4fa49",
                            table="trials_commonbatch",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "commonbatch",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_commonbatchevent" ("density_g_ml", "id", "letter", "made_at", "made_by_id", "mass_g", "number", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "remarks", "revision_id", "viscosity_mpa_s", "water_pct") VALUES (OLD."density_g_ml", OLD."id", OLD."letter", OLD."made_at", OLD."made_by_id", OLD."mass_g", OLD."number", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."remarks", OLD."revision_id", OLD."viscosity_mpa_s", OLD."water_pct"); RETURN NULL;',
                            hash="0de19fb61cda92a52574fb22059c8d64d7458ae0",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_c71ed",
                            table="trials_commonbatch",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "commonbatchevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="7d6273eb83613d6a9e54bf6dac944e00ef826659",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_360c6",
                            table="trials_commonbatchevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "commonbatchevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="5f31790a460fdbf82bb09fa25e069222f151cfe7",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_72e5b",
                            table="trials_commonbatchevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "commonbatchlot",
                    pgtrigger.compiler.Trigger(
                        name="common_batch_lot_frozen",
                        sql=trials.models.history.UnconditionalSql(
                            declare="DECLARE row RECORD;",
                            func="IF TG_OP = 'DELETE' THEN row := OLD; ELSE row := NEW; END IF; IF trials_batch_frozen(row.batch_id) THEN RAISE EXCEPTION 'this is signed: it changes only by an amendment with its reason' USING ERRCODE = 'check_violation', CONSTRAINT = 'common_batch_lot_frozen'; END IF; RETURN row;",
                            hash="9d384f34d23dec64c8df46a8f582bb0cca83b406",
                            operation="INSERT OR UPDATE OR DELETE",
                            pgid="pgtrigger_common_batch_lot_frozen_e8ad1",
                            table="trials_commonbatchlot",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "commonbatchlot",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_commonbatchlotevent" ("batch_id", "id", "lot_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id") VALUES (NEW."batch_id", NEW."id", NEW."lot_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id"); RETURN NULL;',
                            hash="bdde8b7a1373f4851a636a88d2b8a2f671ff026f",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_a6f6c",
                            table="trials_commonbatchlot",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "commonbatchlot",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_commonbatchlotevent" ("batch_id", "id", "lot_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id") VALUES (NEW."batch_id", NEW."id", NEW."lot_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id"); RETURN NULL;',
                            hash="c744ac31063338887c7b92a580e6b6319207ccb0",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_eb9d0",
                            table="trials_commonbatchlot",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "commonbatchlot",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_commonbatchlotevent" ("batch_id", "id", "lot_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id") VALUES (OLD."batch_id", OLD."id", OLD."lot_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id"); RETURN NULL;',
                            hash="1cbf3371a8c021c150b34ab89e599826816e1dab",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_84062",
                            table="trials_commonbatchlot",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "commonbatchlotevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="7a0c59b1782b9321dd1e641b4f0a33f4680cc619",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_4fc8a",
                            table="trials_commonbatchlotevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "commonbatchlotevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="5c99a83ff4992101f152c170f49d109975070fda",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_366d1",
                            table="trials_commonbatchlotevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "component",
                    pgtrigger.compiler.Trigger(
                        name="component_frozen",
                        sql=trials.models.history.UnconditionalSql(
                            declare="DECLARE row RECORD;",
                            func="IF TG_OP = 'DELETE' THEN row := OLD; ELSE row := NEW; END IF; IF EXISTS (SELECT 1 FROM trials_revision r WHERE r.id = row.revision_id AND r.frozen_at IS NOT NULL) THEN RAISE EXCEPTION 'a frozen revision does not change: copy it' USING ERRCODE = 'check_violation', CONSTRAINT = 'component_frozen'; END IF; RETURN row;",
                            hash="0faaa1ee42e740bbb8971b6ba03d42c27ddb7044",
                            operation="INSERT OR UPDATE OR DELETE",
                            pgid="pgtrigger_component_frozen_638b1",
                            table="trials_component",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "component",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_componentevent" ("batch", "density_g_ml", "id", "letter", "name", "non_volatile_pct", "parts", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "received", "revision_id", "viscosity_mpa_s", "water_pct") VALUES (NEW."batch", NEW."density_g_ml", NEW."id", NEW."letter", NEW."name", NEW."non_volatile_pct", NEW."parts", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."received", NEW."revision_id", NEW."viscosity_mpa_s", NEW."water_pct"); RETURN NULL;',
                            hash="9f7a6b63977f4c51a855f006f228de5c1bb2e428",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_841b4",
                            table="trials_component",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "component",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_componentevent" ("batch", "density_g_ml", "id", "letter", "name", "non_volatile_pct", "parts", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "received", "revision_id", "viscosity_mpa_s", "water_pct") VALUES (NEW."batch", NEW."density_g_ml", NEW."id", NEW."letter", NEW."name", NEW."non_volatile_pct", NEW."parts", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."received", NEW."revision_id", NEW."viscosity_mpa_s", NEW."water_pct"); RETURN NULL;',
                            hash="ea77bcd1632095988090d99f93905cfd99303443",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_65e72",
                            table="trials_component",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "component",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_componentevent" ("batch", "density_g_ml", "id", "letter", "name", "non_volatile_pct", "parts", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "received", "revision_id", "viscosity_mpa_s", "water_pct") VALUES (OLD."batch", OLD."density_g_ml", OLD."id", OLD."letter", OLD."name", OLD."non_volatile_pct", OLD."parts", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."received", OLD."revision_id", OLD."viscosity_mpa_s", OLD."water_pct"); RETURN NULL;',
                            hash="887f9a4fb33be4047c06b4f2d526bc04e4b5e1a2",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_738ec",
                            table="trials_component",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "componentevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="fe0466d56baa839e92718557847b578774abe82b",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_aadaa",
                            table="trials_componentevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "componentevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="cf717f08528874df814f67c1d1907b501674031c",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_4ea15",
                            table="trials_componentevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "criterion",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_criterionevent" ("better", "concern", "current", "high", "how", "id", "key", "low", "name", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "position", "scale", "standard", "unit", "version") VALUES (NEW."better", NEW."concern", NEW."current", NEW."high", NEW."how", NEW."id", NEW."key", NEW."low", NEW."name", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."position", NEW."scale", NEW."standard", NEW."unit", NEW."version"); RETURN NULL;',
                            hash="3d070b76deb893ab8f75af53384d2297f57fb6b7",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_0c6bf",
                            table="trials_criterion",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "criterion",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_criterionevent" ("better", "concern", "current", "high", "how", "id", "key", "low", "name", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "position", "scale", "standard", "unit", "version") VALUES (NEW."better", NEW."concern", NEW."current", NEW."high", NEW."how", NEW."id", NEW."key", NEW."low", NEW."name", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."position", NEW."scale", NEW."standard", NEW."unit", NEW."version"); RETURN NULL;',
                            hash="79892e0d61970bbc12e0709b82312945d00ada23",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_aa6eb",
                            table="trials_criterion",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "criterion",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_criterionevent" ("better", "concern", "current", "high", "how", "id", "key", "low", "name", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "position", "scale", "standard", "unit", "version") VALUES (OLD."better", OLD."concern", OLD."current", OLD."high", OLD."how", OLD."id", OLD."key", OLD."low", OLD."name", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."position", OLD."scale", OLD."standard", OLD."unit", OLD."version"); RETURN NULL;',
                            hash="003de816ae754858d3fae069089dca5a154fe804",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_cd273",
                            table="trials_criterion",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "criterionevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="4bfb53f7625ccdff32b71a1600370825a55baf83",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_5b22c",
                            table="trials_criterionevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "criterionevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="aac5274cfe74a8946b5d153aed975c94f7227d76",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_2487e",
                            table="trials_criterionevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "dosage",
                    pgtrigger.compiler.Trigger(
                        name="dosage_frozen",
                        sql=trials.models.history.UnconditionalSql(
                            declare="DECLARE row RECORD;",
                            func="IF TG_OP = 'DELETE' THEN row := OLD; ELSE row := NEW; END IF; IF trials_trial_frozen(row.trial_id) THEN RAISE EXCEPTION 'this is signed: it changes only by an amendment with its reason' USING ERRCODE = 'check_violation', CONSTRAINT = 'dosage_frozen'; END IF; RETURN row;",
                            hash="401881c1f7ec741990162d67c5fd0fa00431daa1",
                            operation="INSERT OR UPDATE OR DELETE",
                            pgid="pgtrigger_dosage_frozen_4df6e",
                            table="trials_dosage",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "dosage",
                    pgtrigger.compiler.Trigger(
                        name="no_dosage_on_a_blank",
                        sql=trials.models.history.UnconditionalSql(
                            func="IF EXISTS (SELECT 1 FROM trials_trial t WHERE t.id = NEW.trial_id AND t.part IN ('blank', 'clean check')) THEN RAISE EXCEPTION 'a blank or clean check takes no additive' USING ERRCODE = 'check_violation', CONSTRAINT = 'no_dosage_on_a_blank'; END IF; RETURN NEW;",
                            hash="962cc5e9e363d66385911c12b4a6c9b56d0dafbf",
                            operation="INSERT OR UPDATE",
                            pgid="pgtrigger_no_dosage_on_a_blank_794fe",
                            table="trials_dosage",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "dosage",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_dosageevent" ("basis", "basis_component", "candidate_id", "counting", "counts_in_ratio", "dosage_pct", "id", "into", "lot_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "planned_g", "stage", "supplied", "trial_id", "weighed_g") VALUES (NEW."basis", NEW."basis_component", NEW."candidate_id", NEW."counting", NEW."counts_in_ratio", NEW."dosage_pct", NEW."id", NEW."into", NEW."lot_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."planned_g", NEW."stage", NEW."supplied", NEW."trial_id", NEW."weighed_g"); RETURN NULL;',
                            hash="87bcb71611e1c577041a931b667fd098fd8e1e06",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_843f6",
                            table="trials_dosage",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "dosage",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_dosageevent" ("basis", "basis_component", "candidate_id", "counting", "counts_in_ratio", "dosage_pct", "id", "into", "lot_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "planned_g", "stage", "supplied", "trial_id", "weighed_g") VALUES (NEW."basis", NEW."basis_component", NEW."candidate_id", NEW."counting", NEW."counts_in_ratio", NEW."dosage_pct", NEW."id", NEW."into", NEW."lot_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."planned_g", NEW."stage", NEW."supplied", NEW."trial_id", NEW."weighed_g"); RETURN NULL;',
                            hash="dffa3e067d60a90d25055ec78842f9cbaaef2e4d",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_a7115",
                            table="trials_dosage",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "dosage",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_dosageevent" ("basis", "basis_component", "candidate_id", "counting", "counts_in_ratio", "dosage_pct", "id", "into", "lot_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "planned_g", "stage", "supplied", "trial_id", "weighed_g") VALUES (OLD."basis", OLD."basis_component", OLD."candidate_id", OLD."counting", OLD."counts_in_ratio", OLD."dosage_pct", OLD."id", OLD."into", OLD."lot_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."planned_g", OLD."stage", OLD."supplied", OLD."trial_id", OLD."weighed_g"); RETURN NULL;',
                            hash="c91187cbaf762c74a4a71ab3d01ef9b881b09394",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_110de",
                            table="trials_dosage",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "dosageevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="e138dd67e97f4fa672c65673b7e3171130be2151",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_56d40",
                            table="trials_dosageevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "dosageevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="4db6c13f5a1144e7c317fca17e9d0c611a425c56",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_c2171",
                            table="trials_dosageevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "enquiry",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_enquiryevent" ("asked", "base_id", "closed", "customer", "due", "field", "film_um", "id", "incumbent_id", "incumbent_note", "incumbent_pct", "number", "owner_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "received", "restricted", "subject", "withheld") VALUES (NEW."asked", NEW."base_id", NEW."closed", NEW."customer", NEW."due", NEW."field", NEW."film_um", NEW."id", NEW."incumbent_id", NEW."incumbent_note", NEW."incumbent_pct", NEW."number", NEW."owner_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."received", NEW."restricted", NEW."subject", NEW."withheld"); RETURN NULL;',
                            hash="73fb8b9f295f20693b3554da1402611bb401bb58",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_1f990",
                            table="trials_enquiry",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "enquiry",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_enquiryevent" ("asked", "base_id", "closed", "customer", "due", "field", "film_um", "id", "incumbent_id", "incumbent_note", "incumbent_pct", "number", "owner_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "received", "restricted", "subject", "withheld") VALUES (NEW."asked", NEW."base_id", NEW."closed", NEW."customer", NEW."due", NEW."field", NEW."film_um", NEW."id", NEW."incumbent_id", NEW."incumbent_note", NEW."incumbent_pct", NEW."number", NEW."owner_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."received", NEW."restricted", NEW."subject", NEW."withheld"); RETURN NULL;',
                            hash="06e2465806e015e96b8b0992bd4354f7e67145e4",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_16663",
                            table="trials_enquiry",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "enquiry",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_enquiryevent" ("asked", "base_id", "closed", "customer", "due", "field", "film_um", "id", "incumbent_id", "incumbent_note", "incumbent_pct", "number", "owner_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "received", "restricted", "subject", "withheld") VALUES (OLD."asked", OLD."base_id", OLD."closed", OLD."customer", OLD."due", OLD."field", OLD."film_um", OLD."id", OLD."incumbent_id", OLD."incumbent_note", OLD."incumbent_pct", OLD."number", OLD."owner_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."received", OLD."restricted", OLD."subject", OLD."withheld"); RETURN NULL;',
                            hash="3faddd92f6676afa7301bbaf3aae1838b6da2951",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_650c6",
                            table="trials_enquiry",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "enquiryevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="7f193414a25610273c5a0deb38b4fafa229ea81d",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_3a3c6",
                            table="trials_enquiryevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "enquiryevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="99d260ff374e255c3c27598913682f5ff8f121f1",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_09cb4",
                            table="trials_enquiryevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "enquiryshare",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_enquiryshareevent" ("enquiry_id", "id", "person_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id") VALUES (NEW."enquiry_id", NEW."id", NEW."person_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id"); RETURN NULL;',
                            hash="73d8c6f28a6a426c45dd51d1700878567bc4b6b4",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_747fb",
                            table="trials_enquiryshare",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "enquiryshare",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_enquiryshareevent" ("enquiry_id", "id", "person_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id") VALUES (NEW."enquiry_id", NEW."id", NEW."person_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id"); RETURN NULL;',
                            hash="3edaa6edc143c8042ac63c7669954daaf8c37b1b",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_c39d6",
                            table="trials_enquiryshare",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "enquiryshare",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_enquiryshareevent" ("enquiry_id", "id", "person_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id") VALUES (OLD."enquiry_id", OLD."id", OLD."person_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id"); RETURN NULL;',
                            hash="04d9b6c2aa11c0247d80ee248d0f9c78d3a03b25",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_4869b",
                            table="trials_enquiryshare",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "enquiryshareevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="b6d36f2fb4d1ea9ed24b6fda66669947dc50328f",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_7fd40",
                            table="trials_enquiryshareevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "enquiryshareevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="c881c3472bc707140a99afa66a6a417cbbcbee31",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_947d8",
                            table="trials_enquiryshareevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "equipment",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_equipmentevent" ("blade_mm", "id", "last_cleaned", "last_silicone", "name", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "retired") VALUES (NEW."blade_mm", NEW."id", NEW."last_cleaned", NEW."last_silicone", NEW."name", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."retired"); RETURN NULL;',
                            hash="05fd7591956c01922e3486792940e5560b73fcfa",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_afe2e",
                            table="trials_equipment",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "equipment",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_equipmentevent" ("blade_mm", "id", "last_cleaned", "last_silicone", "name", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "retired") VALUES (NEW."blade_mm", NEW."id", NEW."last_cleaned", NEW."last_silicone", NEW."name", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."retired"); RETURN NULL;',
                            hash="d2cb99f0af3577ba6db576aa574b0b299399aa53",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_ccd56",
                            table="trials_equipment",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "equipment",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_equipmentevent" ("blade_mm", "id", "last_cleaned", "last_silicone", "name", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "retired") VALUES (OLD."blade_mm", OLD."id", OLD."last_cleaned", OLD."last_silicone", OLD."name", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."retired"); RETURN NULL;',
                            hash="d315646b26288d6162eb9c991800294c5a412868",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_64165",
                            table="trials_equipment",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "equipmentevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="73258d62628483fb918fe15db0a392d3458efcba",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_7fc84",
                            table="trials_equipmentevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "equipmentevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="2b4da580102f98e04c79511e2683384688b3e914",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_cf316",
                            table="trials_equipmentevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "failure",
                    pgtrigger.compiler.Trigger(
                        name="failure_frozen",
                        sql=trials.models.history.UnconditionalSql(
                            declare="DECLARE row RECORD;",
                            func="IF TG_OP = 'DELETE' THEN row := OLD; ELSE row := NEW; END IF; IF trials_trial_frozen(row.trial_id) THEN RAISE EXCEPTION 'this is signed: it changes only by an amendment with its reason' USING ERRCODE = 'check_violation', CONSTRAINT = 'failure_frozen'; END IF; RETURN row;",
                            hash="32ad8420389f690fc7d72d0e1cfa9399eb5c9bd5",
                            operation="INSERT OR UPDATE OR DELETE",
                            pgid="pgtrigger_failure_frozen_3544e",
                            table="trials_failure",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "failure",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_failureevent" ("cause", "how", "id", "mode", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "severity", "trial_id") VALUES (NEW."cause", NEW."how", NEW."id", NEW."mode", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."severity", NEW."trial_id"); RETURN NULL;',
                            hash="f449fd828f03c18f08b6fb6a8d813dd6828e79e4",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_ce8f3",
                            table="trials_failure",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "failure",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_failureevent" ("cause", "how", "id", "mode", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "severity", "trial_id") VALUES (NEW."cause", NEW."how", NEW."id", NEW."mode", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."severity", NEW."trial_id"); RETURN NULL;',
                            hash="f8062c8cdaa08533b71024ce167f4d4aeac75608",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_9c911",
                            table="trials_failure",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "failure",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_failureevent" ("cause", "how", "id", "mode", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "severity", "trial_id") VALUES (OLD."cause", OLD."how", OLD."id", OLD."mode", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."severity", OLD."trial_id"); RETURN NULL;',
                            hash="71f98656df00289955daa3a802e8306ccd02f0e2",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_4bd7d",
                            table="trials_failure",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "failureevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="09c03e578da44b1d8373d50312c9baab2b53072e",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_7d2b9",
                            table="trials_failureevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "failureevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="0762bceb9aefa7f30ecbbbfc2b8af47563ef3956",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_bac3a",
                            table="trials_failureevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "finding",
                    pgtrigger.compiler.Trigger(
                        name="finding_frozen",
                        sql=trials.models.history.UnconditionalSql(
                            declare="DECLARE row RECORD;",
                            func="IF TG_OP = 'DELETE' THEN row := OLD; ELSE row := NEW; END IF; IF trials_trial_frozen(row.trial_id) THEN RAISE EXCEPTION 'this is signed: it changes only by an amendment with its reason' USING ERRCODE = 'check_violation', CONSTRAINT = 'finding_frozen'; END IF; RETURN row;",
                            hash="40431c25dfd576be86b2e1a90fdc91a8b0fd1aab",
                            operation="INSERT OR UPDATE OR DELETE",
                            pgid="pgtrigger_finding_frozen_963bd",
                            table="trials_finding",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "finding",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_findingevent" ("answers", "at", "cause", "id", "person_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "remark", "trial_id") VALUES (NEW."answers", NEW."at", NEW."cause", NEW."id", NEW."person_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."remark", NEW."trial_id"); RETURN NULL;',
                            hash="c612ee0e1aedd33c0cbdcd8eec48acf28b03f0e6",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_a5206",
                            table="trials_finding",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "finding",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_findingevent" ("answers", "at", "cause", "id", "person_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "remark", "trial_id") VALUES (NEW."answers", NEW."at", NEW."cause", NEW."id", NEW."person_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."remark", NEW."trial_id"); RETURN NULL;',
                            hash="fd70067a1a2f6895885d88df815d1d26d2254cda",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_3f70a",
                            table="trials_finding",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "finding",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_findingevent" ("answers", "at", "cause", "id", "person_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "remark", "trial_id") VALUES (OLD."answers", OLD."at", OLD."cause", OLD."id", OLD."person_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."remark", OLD."trial_id"); RETURN NULL;',
                            hash="c8d731225b74d2ad4ccdb336d5791a3c591275e8",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_d296e",
                            table="trials_finding",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "findingevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="8ea62f5488a7e6e2216970403b280c00fb0fd203",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_88de4",
                            table="trials_findingevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "findingevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="48335a968bc9dee1e9703020ea62b68be9ff8256",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_3e2a6",
                            table="trials_findingevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "layer",
                    pgtrigger.compiler.Trigger(
                        name="layer_frozen",
                        sql=trials.models.history.UnconditionalSql(
                            declare="DECLARE row RECORD;",
                            func="IF TG_OP = 'DELETE' THEN row := OLD; ELSE row := NEW; END IF; IF trials_trial_frozen((SELECT p.trial_id FROM trials_panel p WHERE p.id = row.panel_id)) THEN RAISE EXCEPTION 'this is signed: it changes only by an amendment with its reason' USING ERRCODE = 'check_violation', CONSTRAINT = 'layer_frozen'; END IF; RETURN row;",
                            hash="59188c481e90a53eda9d0345cfda3e4d09a01e4e",
                            operation="INSERT OR UPDATE OR DELETE",
                            pgid="pgtrigger_layer_frozen_fd394",
                            table="trials_layer",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "layer",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_layerevent" ("coat", "id", "method", "panel_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "position", "recoated_after_h", "sanded", "spiked_after_min", "wet_um") VALUES (NEW."coat", NEW."id", NEW."method", NEW."panel_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."position", NEW."recoated_after_h", NEW."sanded", NEW."spiked_after_min", NEW."wet_um"); RETURN NULL;',
                            hash="18cd9c5cfc59f9a69189fcbea50be81b1f75c5f9",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_6c2d8",
                            table="trials_layer",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "layer",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_layerevent" ("coat", "id", "method", "panel_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "position", "recoated_after_h", "sanded", "spiked_after_min", "wet_um") VALUES (NEW."coat", NEW."id", NEW."method", NEW."panel_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."position", NEW."recoated_after_h", NEW."sanded", NEW."spiked_after_min", NEW."wet_um"); RETURN NULL;',
                            hash="cbbd75cb949e79d44f6df2cdd6a99625aedfd471",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_69833",
                            table="trials_layer",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "layer",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_layerevent" ("coat", "id", "method", "panel_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "position", "recoated_after_h", "sanded", "spiked_after_min", "wet_um") VALUES (OLD."coat", OLD."id", OLD."method", OLD."panel_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."position", OLD."recoated_after_h", OLD."sanded", OLD."spiked_after_min", OLD."wet_um"); RETURN NULL;',
                            hash="3aeda003b57bd3224da7af12c4477fccfafdc922",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_86c3b",
                            table="trials_layer",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "layerevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="fa7873edbb4d420d9ab750a897abacb6d102f64a",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_c2f4c",
                            table="trials_layerevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "layerevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="80937758679e7493bbbbb5a1b7e45c6136dd5ff1",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_2ec5c",
                            table="trials_layerevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "limit",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_limitevent" ("criterion_id", "enquiry_id", "force", "id", "limit", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id") VALUES (NEW."criterion_id", NEW."enquiry_id", NEW."force", NEW."id", NEW."limit", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id"); RETURN NULL;',
                            hash="c0c290dd79c3f733ba3c99b60125954eb44370d8",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_35571",
                            table="trials_limit",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "limit",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_limitevent" ("criterion_id", "enquiry_id", "force", "id", "limit", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id") VALUES (NEW."criterion_id", NEW."enquiry_id", NEW."force", NEW."id", NEW."limit", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id"); RETURN NULL;',
                            hash="e166e736efaa2ed4ce06993767e67a9c4af4daf9",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_8dbba",
                            table="trials_limit",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "limit",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_limitevent" ("criterion_id", "enquiry_id", "force", "id", "limit", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id") VALUES (OLD."criterion_id", OLD."enquiry_id", OLD."force", OLD."id", OLD."limit", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id"); RETURN NULL;',
                            hash="bb508a4d03d26b28aa93e60162fcd28ee06744a6",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_e2b53",
                            table="trials_limit",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "limitevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="a0fec0a955274275979ee20a5b28afe1b434da6a",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_bff47",
                            table="trials_limitevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "limitevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="77ae70180393942e980855b45de95b3ac0f753b7",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_8ad45",
                            table="trials_limitevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "line",
                    pgtrigger.compiler.Trigger(
                        name="line_frozen",
                        sql=trials.models.history.UnconditionalSql(
                            declare="DECLARE row RECORD;",
                            func="IF TG_OP = 'DELETE' THEN row := OLD; ELSE row := NEW; END IF; IF EXISTS (SELECT 1 FROM trials_component c JOIN trials_revision r ON r.id = c.revision_id WHERE c.id = row.component_id AND r.frozen_at IS NOT NULL) THEN RAISE EXCEPTION 'a frozen revision does not change: copy it' USING ERRCODE = 'check_violation', CONSTRAINT = 'line_frozen'; END IF; RETURN row;",
                            hash="22140a9e557ff525717c4ce618cc69c65b99b436",
                            operation="INSERT OR UPDATE OR DELETE",
                            pgid="pgtrigger_line_frozen_cb696",
                            table="trials_line",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "line",
                    pgtrigger.compiler.Trigger(
                        name="line_lot_of_material",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (NEW.lot_id IS NOT NULL)",
                            func="IF NOT EXISTS (SELECT 1 FROM trials_lot l WHERE l.id = NEW.lot_id AND l.material_id = NEW.material_id) THEN RAISE EXCEPTION 'the lot belongs to another material' USING ERRCODE = 'check_violation', CONSTRAINT = 'line_lot_of_material'; END IF; RETURN NEW;",
                            hash="ff617cabf388d8ebf4b39842f00f703a0bb96460",
                            operation="INSERT OR UPDATE",
                            pgid="pgtrigger_line_lot_of_material_de573",
                            table="trials_line",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "line",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_lineevent" ("component_id", "held", "id", "lot_id", "material_id", "parts", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "position", "stage") VALUES (NEW."component_id", NEW."held", NEW."id", NEW."lot_id", NEW."material_id", NEW."parts", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."position", NEW."stage"); RETURN NULL;',
                            hash="94a0631ea90a20c6bfa87003a18f35b0b1476b9f",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_36a2e",
                            table="trials_line",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "line",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_lineevent" ("component_id", "held", "id", "lot_id", "material_id", "parts", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "position", "stage") VALUES (NEW."component_id", NEW."held", NEW."id", NEW."lot_id", NEW."material_id", NEW."parts", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."position", NEW."stage"); RETURN NULL;',
                            hash="018626120b1421d63f48eb39b8fa71c090f36b74",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_9df95",
                            table="trials_line",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "line",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_lineevent" ("component_id", "held", "id", "lot_id", "material_id", "parts", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "position", "stage") VALUES (OLD."component_id", OLD."held", OLD."id", OLD."lot_id", OLD."material_id", OLD."parts", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."position", OLD."stage"); RETURN NULL;',
                            hash="c336f62994b198bae8a8710e3f95e8a20925e1d3",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_4046d",
                            table="trials_line",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "lineevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="da46fcd363d122fea80747ee4d12180d5b249308",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_31768",
                            table="trials_lineevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "lineevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="1d726e1efb0249f1fdcf269a711efdce7fff13c5",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_eb96e",
                            table="trials_lineevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "lot",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_lotevent" ("appearance", "certificate_as", "certificate_value", "density_g_ml", "equivalent_g", "expires", "id", "material_id", "non_volatile_pct", "number", "on_hand_kg", "opened", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "received", "shaken", "warmed", "water_pct") VALUES (NEW."appearance", NEW."certificate_as", NEW."certificate_value", NEW."density_g_ml", NEW."equivalent_g", NEW."expires", NEW."id", NEW."material_id", NEW."non_volatile_pct", NEW."number", NEW."on_hand_kg", NEW."opened", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."received", NEW."shaken", NEW."warmed", NEW."water_pct"); RETURN NULL;',
                            hash="dea454d26fdf052445245d57035ae54f1eeed73b",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_487b6",
                            table="trials_lot",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "lot",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_lotevent" ("appearance", "certificate_as", "certificate_value", "density_g_ml", "equivalent_g", "expires", "id", "material_id", "non_volatile_pct", "number", "on_hand_kg", "opened", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "received", "shaken", "warmed", "water_pct") VALUES (NEW."appearance", NEW."certificate_as", NEW."certificate_value", NEW."density_g_ml", NEW."equivalent_g", NEW."expires", NEW."id", NEW."material_id", NEW."non_volatile_pct", NEW."number", NEW."on_hand_kg", NEW."opened", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."received", NEW."shaken", NEW."warmed", NEW."water_pct"); RETURN NULL;',
                            hash="f742f83742da8d46d9f8b4215f833110404e95fb",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_01011",
                            table="trials_lot",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "lot",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_lotevent" ("appearance", "certificate_as", "certificate_value", "density_g_ml", "equivalent_g", "expires", "id", "material_id", "non_volatile_pct", "number", "on_hand_kg", "opened", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "received", "shaken", "warmed", "water_pct") VALUES (OLD."appearance", OLD."certificate_as", OLD."certificate_value", OLD."density_g_ml", OLD."equivalent_g", OLD."expires", OLD."id", OLD."material_id", OLD."non_volatile_pct", OLD."number", OLD."on_hand_kg", OLD."opened", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."received", OLD."shaken", OLD."warmed", OLD."water_pct"); RETURN NULL;',
                            hash="2b82af294d459f61922394e40d9ce985ff6ce010",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_11b90",
                            table="trials_lot",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "lotevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="c7a056c4bedba05aadccfb13eae56ed7a82c02da",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_87ca9",
                            table="trials_lotevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "lotevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="b7fc19130ee78a9ddf9156b2adbf12c014fd4a63",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_745df",
                            table="trials_lotevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "panel",
                    pgtrigger.compiler.Trigger(
                        name="panel_frozen",
                        sql=trials.models.history.UnconditionalSql(
                            declare="DECLARE row RECORD;",
                            func="IF TG_OP = 'DELETE' THEN row := OLD; ELSE row := NEW; END IF; IF trials_trial_frozen(row.trial_id) THEN RAISE EXCEPTION 'this is signed: it changes only by an amendment with its reason' USING ERRCODE = 'check_violation', CONSTRAINT = 'panel_frozen'; END IF; RETURN row;",
                            hash="d0060ad994d8796265eb727c31c1ef433bf401c1",
                            operation="INSERT OR UPDATE OR DELETE",
                            pgid="pgtrigger_panel_frozen_faee8",
                            table="trials_panel",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "panel",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_panelevent" ("air_c", "applied_at", "area_dm2", "code", "humidity_pct", "id", "mass_g", "material_c", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "remark", "stored_tin_id", "substrate", "substrate_c", "trial_id") VALUES (NEW."air_c", NEW."applied_at", NEW."area_dm2", NEW."code", NEW."humidity_pct", NEW."id", NEW."mass_g", NEW."material_c", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."remark", NEW."stored_tin_id", NEW."substrate", NEW."substrate_c", NEW."trial_id"); RETURN NULL;',
                            hash="cd633feba0b91db0e55554d8e3a8909d586b62f8",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_147a0",
                            table="trials_panel",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "panel",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_panelevent" ("air_c", "applied_at", "area_dm2", "code", "humidity_pct", "id", "mass_g", "material_c", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "remark", "stored_tin_id", "substrate", "substrate_c", "trial_id") VALUES (NEW."air_c", NEW."applied_at", NEW."area_dm2", NEW."code", NEW."humidity_pct", NEW."id", NEW."mass_g", NEW."material_c", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."remark", NEW."stored_tin_id", NEW."substrate", NEW."substrate_c", NEW."trial_id"); RETURN NULL;',
                            hash="364f549e26a39c5a0d5b8b1513ee0827a98f4615",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_6d0a8",
                            table="trials_panel",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "panel",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_panelevent" ("air_c", "applied_at", "area_dm2", "code", "humidity_pct", "id", "mass_g", "material_c", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "remark", "stored_tin_id", "substrate", "substrate_c", "trial_id") VALUES (OLD."air_c", OLD."applied_at", OLD."area_dm2", OLD."code", OLD."humidity_pct", OLD."id", OLD."mass_g", OLD."material_c", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."remark", OLD."stored_tin_id", OLD."substrate", OLD."substrate_c", OLD."trial_id"); RETURN NULL;',
                            hash="e633231b73bed92889c3b63b0db8dbc423c5e419",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_8bb41",
                            table="trials_panel",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "panelevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="4ac7462b5be9790270c900bc169e6aae1b2a3146",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_d7c80",
                            table="trials_panelevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "panelevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="d3c52b8ef65fb37a910d7b161be3c260bdfb8a1c",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_b6d84",
                            table="trials_panelevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "paper",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_paperevent" ("expires", "id", "issued", "material_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "region", "says", "subject", "title") VALUES (NEW."expires", NEW."id", NEW."issued", NEW."material_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."region", NEW."says", NEW."subject", NEW."title"); RETURN NULL;',
                            hash="0f1740444f0e851dee152147dcc451c6bb66f72c",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_1b46b",
                            table="trials_paper",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "paper",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_paperevent" ("expires", "id", "issued", "material_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "region", "says", "subject", "title") VALUES (NEW."expires", NEW."id", NEW."issued", NEW."material_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."region", NEW."says", NEW."subject", NEW."title"); RETURN NULL;',
                            hash="6cb6db7a2a84a44dd84646c9cb01fb983ea1a4e7",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_20982",
                            table="trials_paper",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "paper",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_paperevent" ("expires", "id", "issued", "material_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "region", "says", "subject", "title") VALUES (OLD."expires", OLD."id", OLD."issued", OLD."material_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."region", OLD."says", OLD."subject", OLD."title"); RETURN NULL;',
                            hash="30c28e6c53113b23e6282d66c5b009a34b0de4ba",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_e1e2d",
                            table="trials_paper",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "paperevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="4fc81d9399d64ec773658a6ace7f7b8c28484c84",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_72860",
                            table="trials_paperevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "paperevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="0a45636d80a215205df8214b32ab4c32b0ad16ed",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_5816b",
                            table="trials_paperevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "person",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_personevent" ("full_name", "id", "initials", "is_active", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "role", "sign_in_name") VALUES (NEW."full_name", NEW."id", NEW."initials", NEW."is_active", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."role", NEW."sign_in_name"); RETURN NULL;',
                            hash="e77692c765f874a171f635937bddc42d62160be8",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_58024",
                            table="trials_person",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "person",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition='WHEN (OLD."full_name" IS DISTINCT FROM (NEW."full_name") OR OLD."id" IS DISTINCT FROM (NEW."id") OR OLD."initials" IS DISTINCT FROM (NEW."initials") OR OLD."is_active" IS DISTINCT FROM (NEW."is_active") OR OLD."role" IS DISTINCT FROM (NEW."role") OR OLD."sign_in_name" IS DISTINCT FROM (NEW."sign_in_name"))',
                            func='INSERT INTO "trials_personevent" ("full_name", "id", "initials", "is_active", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "role", "sign_in_name") VALUES (NEW."full_name", NEW."id", NEW."initials", NEW."is_active", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."role", NEW."sign_in_name"); RETURN NULL;',
                            hash="1b1e4872a4bfc6b544978841ac526346820c9f74",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_756bc",
                            table="trials_person",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "person",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_personevent" ("full_name", "id", "initials", "is_active", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "role", "sign_in_name") VALUES (OLD."full_name", OLD."id", OLD."initials", OLD."is_active", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."role", OLD."sign_in_name"); RETURN NULL;',
                            hash="1c2095bdec1c78724ef2249fd088b7aa682ac632",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_18e09",
                            table="trials_person",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "personevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="d17995ec5bfb26537eec8ef326da3c7a2b944294",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_852b1",
                            table="trials_personevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "personevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="d1678d5b58af3572b037bffdffb458ce433b0b80",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_d3af7",
                            table="trials_personevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "photo",
                    pgtrigger.compiler.Trigger(
                        name="photo_frozen",
                        sql=trials.models.history.UnconditionalSql(
                            declare="DECLARE row RECORD;",
                            func="IF TG_OP = 'DELETE' THEN row := OLD; ELSE row := NEW; END IF; IF trials_trial_frozen((SELECT p.trial_id FROM trials_panel p WHERE p.id = row.panel_id)) THEN RAISE EXCEPTION 'this is signed: it changes only by an amendment with its reason' USING ERRCODE = 'check_violation', CONSTRAINT = 'photo_frozen'; END IF; RETURN row;",
                            hash="96b0843909847e7ea593b6973e8b4dd3183c4a0d",
                            operation="INSERT OR UPDATE OR DELETE",
                            pgid="pgtrigger_photo_frozen_deddf",
                            table="trials_photo",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "photo",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_photoevent" ("age_h", "height_px", "id", "mm_per_px", "original", "original_name", "original_sha256", "panel_id", "person_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "picture", "picture_sha256", "remark", "taken_at", "width_px") VALUES (NEW."age_h", NEW."height_px", NEW."id", NEW."mm_per_px", NEW."original", NEW."original_name", NEW."original_sha256", NEW."panel_id", NEW."person_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."picture", NEW."picture_sha256", NEW."remark", NEW."taken_at", NEW."width_px"); RETURN NULL;',
                            hash="bd5bc23b65eb4ca13ed2a5688c20f0fbdb44ce2f",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_1f088",
                            table="trials_photo",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "photo",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_photoevent" ("age_h", "height_px", "id", "mm_per_px", "original", "original_name", "original_sha256", "panel_id", "person_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "picture", "picture_sha256", "remark", "taken_at", "width_px") VALUES (NEW."age_h", NEW."height_px", NEW."id", NEW."mm_per_px", NEW."original", NEW."original_name", NEW."original_sha256", NEW."panel_id", NEW."person_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."picture", NEW."picture_sha256", NEW."remark", NEW."taken_at", NEW."width_px"); RETURN NULL;',
                            hash="d184e34fddbb0864b1bab71263b81a03a2622abc",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_0342d",
                            table="trials_photo",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "photo",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_photoevent" ("age_h", "height_px", "id", "mm_per_px", "original", "original_name", "original_sha256", "panel_id", "person_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "picture", "picture_sha256", "remark", "taken_at", "width_px") VALUES (OLD."age_h", OLD."height_px", OLD."id", OLD."mm_per_px", OLD."original", OLD."original_name", OLD."original_sha256", OLD."panel_id", OLD."person_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."picture", OLD."picture_sha256", OLD."remark", OLD."taken_at", OLD."width_px"); RETURN NULL;',
                            hash="218cf83fe3341ac6f482ba64a21642ce1462ecdc",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_e8cc9",
                            table="trials_photo",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "photoevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="031eae814bb6bdd435a2648678276353267b1d13",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_0ac45",
                            table="trials_photoevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "photoevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="897b03d86826926ff3a69940d8285e435bbd86d6",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_5a74d",
                            table="trials_photoevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "rating",
                    pgtrigger.compiler.Trigger(
                        name="rating_frozen",
                        sql=trials.models.history.UnconditionalSql(
                            declare="DECLARE row RECORD;",
                            func="IF TG_OP = 'DELETE' THEN row := OLD; ELSE row := NEW; END IF; IF trials_trial_frozen((SELECT p.trial_id FROM trials_panel p WHERE p.id = row.panel_id)) THEN RAISE EXCEPTION 'this is signed: it changes only by an amendment with its reason' USING ERRCODE = 'check_violation', CONSTRAINT = 'rating_frozen'; END IF; RETURN row;",
                            hash="68ad9dad7a75280cb563ac8cc528edc8722cb497",
                            operation="INSERT OR UPDATE OR DELETE",
                            pgid="pgtrigger_rating_frozen_7011a",
                            table="trials_rating",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "rating",
                    pgtrigger.compiler.Trigger(
                        name="rating_on_its_scale",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (NEW.value IS NOT NULL)",
                            func="IF EXISTS (SELECT 1 FROM trials_criterion c WHERE c.id = NEW.criterion_id AND (NEW.value < c.low OR NEW.value > c.high)) THEN RAISE EXCEPTION 'the value is off the scale of its criterion' USING ERRCODE = 'check_violation', CONSTRAINT = 'rating_on_its_scale'; END IF; RETURN NEW;",
                            hash="703d0caa46e2a79f9c857e717e3856157c1e7065",
                            operation="INSERT OR UPDATE",
                            pgid="pgtrigger_rating_on_its_scale_295f6",
                            table="trials_rating",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "rating",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_ratingevent" ("age_h", "at", "blind", "criterion_id", "id", "instrument", "panel_id", "person_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "value", "word") VALUES (NEW."age_h", NEW."at", NEW."blind", NEW."criterion_id", NEW."id", NEW."instrument", NEW."panel_id", NEW."person_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."value", NEW."word"); RETURN NULL;',
                            hash="1932fc1ff1b097cbb3e657b03891432143f28c6d",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_e2350",
                            table="trials_rating",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "rating",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_ratingevent" ("age_h", "at", "blind", "criterion_id", "id", "instrument", "panel_id", "person_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "value", "word") VALUES (NEW."age_h", NEW."at", NEW."blind", NEW."criterion_id", NEW."id", NEW."instrument", NEW."panel_id", NEW."person_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."value", NEW."word"); RETURN NULL;',
                            hash="b1ba138e92b1385406d95d782a7d06cf33f05b6a",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_afe98",
                            table="trials_rating",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "rating",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_ratingevent" ("age_h", "at", "blind", "criterion_id", "id", "instrument", "panel_id", "person_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "value", "word") VALUES (OLD."age_h", OLD."at", OLD."blind", OLD."criterion_id", OLD."id", OLD."instrument", OLD."panel_id", OLD."person_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."value", OLD."word"); RETURN NULL;',
                            hash="f6d0c0f1d0c01bfc5f6de811ffc914e8a244a826",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_c8766",
                            table="trials_rating",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "ratingevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="46fd4b33651ced663c1cacf71992b2b49e74b773",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_1adf4",
                            table="trials_ratingevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "ratingevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="2c6f8ec116f628d97e2731e86fccdce25fb9a2e0",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_3379a",
                            table="trials_ratingevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "rawmaterial",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_rawmaterialevent" ("active_pct", "code", "density_g_ml", "diisocyanate_pct", "function", "hazards", "id", "name", "non_volatile_pct", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "price_per_kg", "remarks", "sheet_issued", "supplier", "voc_pct", "withdrawn") VALUES (NEW."active_pct", NEW."code", NEW."density_g_ml", NEW."diisocyanate_pct", NEW."function", NEW."hazards", NEW."id", NEW."name", NEW."non_volatile_pct", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."price_per_kg", NEW."remarks", NEW."sheet_issued", NEW."supplier", NEW."voc_pct", NEW."withdrawn"); RETURN NULL;',
                            hash="f40959fee36a22a1d09051814a19876a38a3e2e4",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_bded0",
                            table="trials_rawmaterial",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "rawmaterial",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_rawmaterialevent" ("active_pct", "code", "density_g_ml", "diisocyanate_pct", "function", "hazards", "id", "name", "non_volatile_pct", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "price_per_kg", "remarks", "sheet_issued", "supplier", "voc_pct", "withdrawn") VALUES (NEW."active_pct", NEW."code", NEW."density_g_ml", NEW."diisocyanate_pct", NEW."function", NEW."hazards", NEW."id", NEW."name", NEW."non_volatile_pct", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."price_per_kg", NEW."remarks", NEW."sheet_issued", NEW."supplier", NEW."voc_pct", NEW."withdrawn"); RETURN NULL;',
                            hash="578eb8325cd851593b504cd8489ab4faa47c6e0d",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_007f0",
                            table="trials_rawmaterial",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "rawmaterial",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_rawmaterialevent" ("active_pct", "code", "density_g_ml", "diisocyanate_pct", "function", "hazards", "id", "name", "non_volatile_pct", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "price_per_kg", "remarks", "sheet_issued", "supplier", "voc_pct", "withdrawn") VALUES (OLD."active_pct", OLD."code", OLD."density_g_ml", OLD."diisocyanate_pct", OLD."function", OLD."hazards", OLD."id", OLD."name", OLD."non_volatile_pct", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."price_per_kg", OLD."remarks", OLD."sheet_issued", OLD."supplier", OLD."voc_pct", OLD."withdrawn"); RETURN NULL;',
                            hash="7135fa0fa32c9871f78cdb1c471b934f05f1f279",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_6957c",
                            table="trials_rawmaterial",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "rawmaterialevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="1aa23d9b3126d23139b8e5009b439cc44637599d",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_17db4",
                            table="trials_rawmaterialevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "rawmaterialevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="a48dc7f158b0329b934dd5e786ba48eaba199b8e",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_7b4ab",
                            table="trials_rawmaterialevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "reactivegroup",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_reactivegroupevent" ("entered", "entered_as", "equivalent_g", "group", "hydrogens_per_nitrogen", "id", "material_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id") VALUES (NEW."entered", NEW."entered_as", NEW."equivalent_g", NEW."group", NEW."hydrogens_per_nitrogen", NEW."id", NEW."material_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id"); RETURN NULL;',
                            hash="436c86e4ae65a18e05886a03acd63318a293aa75",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_37ea9",
                            table="trials_reactivegroup",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "reactivegroup",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_reactivegroupevent" ("entered", "entered_as", "equivalent_g", "group", "hydrogens_per_nitrogen", "id", "material_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id") VALUES (NEW."entered", NEW."entered_as", NEW."equivalent_g", NEW."group", NEW."hydrogens_per_nitrogen", NEW."id", NEW."material_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id"); RETURN NULL;',
                            hash="c75b0fb77adfc27f9e3db94e85457b8b144b7762",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_3497d",
                            table="trials_reactivegroup",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "reactivegroup",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_reactivegroupevent" ("entered", "entered_as", "equivalent_g", "group", "hydrogens_per_nitrogen", "id", "material_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id") VALUES (OLD."entered", OLD."entered_as", OLD."equivalent_g", OLD."group", OLD."hydrogens_per_nitrogen", OLD."id", OLD."material_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id"); RETURN NULL;',
                            hash="8885f4b298433a1be0333c4797ae201d91704d77",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_bcb86",
                            table="trials_reactivegroup",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "reactivegroupevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="8edc6cefe85192952c9f289e5c2b19f74d45c3ac",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_e71c9",
                            table="trials_reactivegroupevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "reactivegroupevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="c30615379af03ee9b49cbdfdca33494caa3cf224",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_1b590",
                            table="trials_reactivegroupevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "retain",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_retainevent" ("id", "lent_on", "lent_to", "panel_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "place", "returned_on", "trial_id", "until", "what") VALUES (NEW."id", NEW."lent_on", NEW."lent_to", NEW."panel_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."place", NEW."returned_on", NEW."trial_id", NEW."until", NEW."what"); RETURN NULL;',
                            hash="659bc6a481de2303ce006bcf1eb72b5c4d554cb8",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_44009",
                            table="trials_retain",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "retain",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_retainevent" ("id", "lent_on", "lent_to", "panel_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "place", "returned_on", "trial_id", "until", "what") VALUES (NEW."id", NEW."lent_on", NEW."lent_to", NEW."panel_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."place", NEW."returned_on", NEW."trial_id", NEW."until", NEW."what"); RETURN NULL;',
                            hash="2d8eb350a60b52701f6c3e21b3bac0d98702ddba",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_ea3e0",
                            table="trials_retain",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "retain",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_retainevent" ("id", "lent_on", "lent_to", "panel_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "place", "returned_on", "trial_id", "until", "what") VALUES (OLD."id", OLD."lent_on", OLD."lent_to", OLD."panel_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."place", OLD."returned_on", OLD."trial_id", OLD."until", OLD."what"); RETURN NULL;',
                            hash="002048b40fb3b7b88b7f3a186a063ee8cfcb3b96",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_1dbdc",
                            table="trials_retain",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "retainevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="15e0f313eee9a12431ee7e944f2ecb199ac00745",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_489a6",
                            table="trials_retainevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "retainevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="b4aaf5ed2143af77bfe82899b425a4c7d746b20a",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_2ac99",
                            table="trials_retainevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "revision",
                    pgtrigger.compiler.Trigger(
                        name="revision_frozen",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.frozen_at IS NOT NULL)",
                            func="RAISE EXCEPTION 'a frozen revision does not change: copy it' USING ERRCODE = 'check_violation', CONSTRAINT = 'revision_frozen';",
                            hash="a8bf37a8a0c29a040d0ed63c8a916a33a3d64652",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_revision_frozen_0a794",
                            table="trials_revision",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "revision",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_revisionevent" ("air_free_density_g_ml", "air_free_method", "base_id", "frozen_at", "id", "made_at", "made_by_id", "number", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "pot_life_min", "viscosity_mpa_s", "why", "yield_pa") VALUES (NEW."air_free_density_g_ml", NEW."air_free_method", NEW."base_id", NEW."frozen_at", NEW."id", NEW."made_at", NEW."made_by_id", NEW."number", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."pot_life_min", NEW."viscosity_mpa_s", NEW."why", NEW."yield_pa"); RETURN NULL;',
                            hash="84895ffd9d8a47849126b32e59eced2b3a5b687a",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_7d31a",
                            table="trials_revision",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "revision",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_revisionevent" ("air_free_density_g_ml", "air_free_method", "base_id", "frozen_at", "id", "made_at", "made_by_id", "number", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "pot_life_min", "viscosity_mpa_s", "why", "yield_pa") VALUES (NEW."air_free_density_g_ml", NEW."air_free_method", NEW."base_id", NEW."frozen_at", NEW."id", NEW."made_at", NEW."made_by_id", NEW."number", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."pot_life_min", NEW."viscosity_mpa_s", NEW."why", NEW."yield_pa"); RETURN NULL;',
                            hash="9efae15f7c5233ef1baa726319428f5774f0ab90",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_d66b4",
                            table="trials_revision",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "revision",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_revisionevent" ("air_free_density_g_ml", "air_free_method", "base_id", "frozen_at", "id", "made_at", "made_by_id", "number", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "pot_life_min", "viscosity_mpa_s", "why", "yield_pa") VALUES (OLD."air_free_density_g_ml", OLD."air_free_method", OLD."base_id", OLD."frozen_at", OLD."id", OLD."made_at", OLD."made_by_id", OLD."number", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."pot_life_min", OLD."viscosity_mpa_s", OLD."why", OLD."yield_pa"); RETURN NULL;',
                            hash="5f5e73f498eec927cf78c4ff3dc612923b37b4cc",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_79209",
                            table="trials_revision",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "revisionevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="82476fac276663c0db9d293e63a056793bc34245",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_84bc4",
                            table="trials_revisionevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "revisionevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="64cf8d0f73424091475c58954d2ba09d5aeb0ed7",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_4ae17",
                            table="trials_revisionevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "seal",
                    pgtrigger.compiler.Trigger(
                        name="seal_stays",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'a seal stays as it is' USING ERRCODE = 'check_violation', CONSTRAINT = 'seal_stays';",
                            hash="cfca6a7e57db2f94493ff15cebe9c1fd8d2fe0ff",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_seal_stays_081da",
                            table="trials_seal",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "seal",
                    pgtrigger.compiler.Trigger(
                        name="seals_stay",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'a seal stays as it is' USING ERRCODE = 'check_violation', CONSTRAINT = 'seals_stay';",
                            hash="88990f51ef7ee5040905686cd7cd3f3894e9d9d6",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_seals_stay_a476a",
                            table="trials_seal",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "series",
                    pgtrigger.compiler.Trigger(
                        name="series_frozen",
                        sql=trials.models.history.UnconditionalSql(
                            declare="DECLARE row RECORD;",
                            func="IF TG_OP = 'DELETE' THEN row := OLD; ELSE row := NEW; END IF; IF trials_series_frozen(row.id) THEN RAISE EXCEPTION 'this is signed: it changes only by an amendment with its reason' USING ERRCODE = 'check_violation', CONSTRAINT = 'series_frozen'; END IF; RETURN row;",
                            hash="cfffe2a36fb76992fae9232ed6a5c8d4e4377737",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_series_frozen_41592",
                            table="trials_series",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "series",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_seriesevent" ("basis", "basis_component", "batch_mass_g", "common_batch_id", "conclusion", "counting", "enquiry_id", "film_um", "follows_id", "id", "into", "ladder_pct", "lesson", "not_tested", "number", "order_rule", "outcome", "owner_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "planned_at", "question", "ratio", "recommended_id", "replicates", "restricted", "revision_id", "round", "seed", "stage", "supplied", "title", "window_from_pct", "window_to_pct", "working_pct") VALUES (NEW."basis", NEW."basis_component", NEW."batch_mass_g", NEW."common_batch_id", NEW."conclusion", NEW."counting", NEW."enquiry_id", NEW."film_um", NEW."follows_id", NEW."id", NEW."into", NEW."ladder_pct", NEW."lesson", NEW."not_tested", NEW."number", NEW."order_rule", NEW."outcome", NEW."owner_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."planned_at", NEW."question", NEW."ratio", NEW."recommended_id", NEW."replicates", NEW."restricted", NEW."revision_id", NEW."round", NEW."seed", NEW."stage", NEW."supplied", NEW."title", NEW."window_from_pct", NEW."window_to_pct", NEW."working_pct"); RETURN NULL;',
                            hash="a1144212a43616b293fd8e6195fec12df728fb87",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_e4f9d",
                            table="trials_series",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "series",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_seriesevent" ("basis", "basis_component", "batch_mass_g", "common_batch_id", "conclusion", "counting", "enquiry_id", "film_um", "follows_id", "id", "into", "ladder_pct", "lesson", "not_tested", "number", "order_rule", "outcome", "owner_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "planned_at", "question", "ratio", "recommended_id", "replicates", "restricted", "revision_id", "round", "seed", "stage", "supplied", "title", "window_from_pct", "window_to_pct", "working_pct") VALUES (NEW."basis", NEW."basis_component", NEW."batch_mass_g", NEW."common_batch_id", NEW."conclusion", NEW."counting", NEW."enquiry_id", NEW."film_um", NEW."follows_id", NEW."id", NEW."into", NEW."ladder_pct", NEW."lesson", NEW."not_tested", NEW."number", NEW."order_rule", NEW."outcome", NEW."owner_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."planned_at", NEW."question", NEW."ratio", NEW."recommended_id", NEW."replicates", NEW."restricted", NEW."revision_id", NEW."round", NEW."seed", NEW."stage", NEW."supplied", NEW."title", NEW."window_from_pct", NEW."window_to_pct", NEW."working_pct"); RETURN NULL;',
                            hash="b239bd5db6e32a7c221560675a9176dd83cdae08",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_8d2bc",
                            table="trials_series",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "series",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_seriesevent" ("basis", "basis_component", "batch_mass_g", "common_batch_id", "conclusion", "counting", "enquiry_id", "film_um", "follows_id", "id", "into", "ladder_pct", "lesson", "not_tested", "number", "order_rule", "outcome", "owner_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "planned_at", "question", "ratio", "recommended_id", "replicates", "restricted", "revision_id", "round", "seed", "stage", "supplied", "title", "window_from_pct", "window_to_pct", "working_pct") VALUES (OLD."basis", OLD."basis_component", OLD."batch_mass_g", OLD."common_batch_id", OLD."conclusion", OLD."counting", OLD."enquiry_id", OLD."film_um", OLD."follows_id", OLD."id", OLD."into", OLD."ladder_pct", OLD."lesson", OLD."not_tested", OLD."number", OLD."order_rule", OLD."outcome", OLD."owner_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."planned_at", OLD."question", OLD."ratio", OLD."recommended_id", OLD."replicates", OLD."restricted", OLD."revision_id", OLD."round", OLD."seed", OLD."stage", OLD."supplied", OLD."title", OLD."window_from_pct", OLD."window_to_pct", OLD."working_pct"); RETURN NULL;',
                            hash="be4b71ba47c561c5f8bb2531f1a6fc1be4559a38",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_40803",
                            table="trials_series",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "seriescriterion",
                    pgtrigger.compiler.Trigger(
                        name="series_criterion_frozen",
                        sql=trials.models.history.UnconditionalSql(
                            declare="DECLARE row RECORD;",
                            func="IF TG_OP = 'DELETE' THEN row := OLD; ELSE row := NEW; END IF; IF trials_series_frozen(row.series_id) THEN RAISE EXCEPTION 'this is signed: it changes only by an amendment with its reason' USING ERRCODE = 'check_violation', CONSTRAINT = 'series_criterion_frozen'; END IF; RETURN row;",
                            hash="11c1e6887276db72a187e16afb84e176e65aa464",
                            operation="INSERT OR UPDATE OR DELETE",
                            pgid="pgtrigger_series_criterion_frozen_dded7",
                            table="trials_seriescriterion",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "seriescriterion",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_seriescriterionevent" ("criterion_id", "id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "series_id", "weight") VALUES (NEW."criterion_id", NEW."id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."series_id", NEW."weight"); RETURN NULL;',
                            hash="4d209284b9f96aeec57e10554be22aad8756ddd9",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_407fa",
                            table="trials_seriescriterion",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "seriescriterion",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_seriescriterionevent" ("criterion_id", "id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "series_id", "weight") VALUES (NEW."criterion_id", NEW."id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."series_id", NEW."weight"); RETURN NULL;',
                            hash="49a8e12d984dba69a32f9921cb68b278fe7ac451",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_1a475",
                            table="trials_seriescriterion",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "seriescriterion",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_seriescriterionevent" ("criterion_id", "id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "series_id", "weight") VALUES (OLD."criterion_id", OLD."id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."series_id", OLD."weight"); RETURN NULL;',
                            hash="e619b6eda4d0a74fd1d4e0ea42ecf84caf9ec822",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_d8287",
                            table="trials_seriescriterion",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "seriescriterionevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="94e39b7e1c537e54df1574e1cf1aaecd48d7ef4c",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_646f4",
                            table="trials_seriescriterionevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "seriescriterionevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="19e258f798b169180b30c76da85f3dd776d0d1ec",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_662cb",
                            table="trials_seriescriterionevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "seriesevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="2aca2a6b911229ed6b9a618bd719ff7d3dde65ea",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_11ac8",
                            table="trials_seriesevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "seriesevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="ceb24336622192338d68584e20f211b488d5bac7",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_393d3",
                            table="trials_seriesevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "seriesshare",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_seriesshareevent" ("id", "person_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "series_id") VALUES (NEW."id", NEW."person_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."series_id"); RETURN NULL;',
                            hash="647dd6060919423301c737973d9b7e221c550e3c",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_3d237",
                            table="trials_seriesshare",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "seriesshare",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_seriesshareevent" ("id", "person_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "series_id") VALUES (NEW."id", NEW."person_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."series_id"); RETURN NULL;',
                            hash="965a6dabb8dc1add372ed4ab1f44320acda22ee2",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_0d6f3",
                            table="trials_seriesshare",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "seriesshare",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_seriesshareevent" ("id", "person_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "series_id") VALUES (OLD."id", OLD."person_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."series_id"); RETURN NULL;',
                            hash="ec55e770a119401a8a4fa0548e46ebe0be32f1dc",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_0720a",
                            table="trials_seriesshare",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "seriesshareevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="bb9d8ab98a3ada5d5226fa42a1fd5794232936fe",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_8373a",
                            table="trials_seriesshareevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "seriesshareevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="975b517117b3ce0b90cc4c1e992379c9df6955e5",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_6ce78",
                            table="trials_seriesshareevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "signature",
                    pgtrigger.compiler.Trigger(
                        name="signature_stays",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.digest <> '' OR OLD.xid <> NEW.xid OR OLD.xid <> (pg_current_xact_id()::text)::bigint OR OLD.person_id <> NEW.person_id OR OLD.meaning <> NEW.meaning OR OLD.reason <> NEW.reason OR OLD.series_id IS DISTINCT FROM NEW.series_id OR OLD.trial_id IS DISTINCT FROM NEW.trial_id OR OLD.revision_id IS DISTINCT FROM NEW.revision_id OR OLD.at <> NEW.at)",
                            func="RAISE EXCEPTION 'a signature stays' USING ERRCODE = 'check_violation', CONSTRAINT = 'signature_stays';",
                            hash="07da88e6c8f2ec4b8adb7f455147921ef32c87f8",
                            operation="UPDATE",
                            pgid="pgtrigger_signature_stays_b3164",
                            table="trials_signature",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "signature",
                    pgtrigger.compiler.Trigger(
                        name="signature_is_never_taken_back",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'a signature stays' USING ERRCODE = 'check_violation', CONSTRAINT = 'signature_is_never_taken_back';",
                            hash="8056bb867dfe907acdc93aa0db1a6673665c880c",
                            operation="DELETE",
                            pgid="pgtrigger_signature_is_never_taken_back_af58c",
                            table="trials_signature",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "signature",
                    pgtrigger.compiler.Trigger(
                        name="signature_has_content",
                        sql=trials.models.history.UnconditionalSql(
                            constraint="CONSTRAINT",
                            func="IF EXISTS (SELECT 1 FROM trials_signature s WHERE s.id = NEW.id AND s.digest = '') THEN RAISE EXCEPTION 'a signature without content is none' USING ERRCODE = 'check_violation', CONSTRAINT = 'signature_has_content'; END IF; RETURN NEW;",
                            hash="dbb5fc55c549b0fa053b6387566344b42051655b",
                            operation="INSERT",
                            pgid="pgtrigger_signature_has_content_e99ef",
                            table="trials_signature",
                            timing="DEFERRABLE INITIALLY DEFERRED",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "signature",
                    pgtrigger.compiler.Trigger(
                        name="signatures_stay",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'a signature stays' USING ERRCODE = 'check_violation', CONSTRAINT = 'signatures_stay';",
                            hash="c8b0fcd8b691b5f5e8be9d6ab97be7dcba9e5379",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_signatures_stay_7560a",
                            table="trials_signature",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "signature",
                    pgtrigger.compiler.Trigger(
                        name="countersigned_by_another",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (NEW.meaning = 'countersigned')",
                            func="IF NOT EXISTS (SELECT 1 FROM trials_signature s WHERE s.meaning = 'performed' AND s.person_id <> NEW.person_id AND s.series_id IS NOT DISTINCT FROM NEW.series_id AND s.trial_id IS NOT DISTINCT FROM NEW.trial_id AND s.revision_id IS NOT DISTINCT FROM NEW.revision_id) THEN RAISE EXCEPTION 'another person than the performer countersigns' USING ERRCODE = 'check_violation', CONSTRAINT = 'countersigned_by_another'; END IF; RETURN NEW;",
                            hash="1f844aedbb36232c69f033a8fd8fbedddda9766a",
                            operation="INSERT",
                            pgid="pgtrigger_countersigned_by_another_9deeb",
                            table="trials_signature",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "signature",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_signatureevent" ("at", "canon", "canonical", "digest", "id", "meaning", "person_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "previous", "previous_all", "reason", "revision_id", "series_id", "trial_id", "xid") VALUES (NEW."at", NEW."canon", NEW."canonical", NEW."digest", NEW."id", NEW."meaning", NEW."person_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."previous", NEW."previous_all", NEW."reason", NEW."revision_id", NEW."series_id", NEW."trial_id", NEW."xid"); RETURN NULL;',
                            hash="128a33d4492c4ff66993fac9488414f1ba04128b",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_82007",
                            table="trials_signature",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "signature",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_signatureevent" ("at", "canon", "canonical", "digest", "id", "meaning", "person_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "previous", "previous_all", "reason", "revision_id", "series_id", "trial_id", "xid") VALUES (NEW."at", NEW."canon", NEW."canonical", NEW."digest", NEW."id", NEW."meaning", NEW."person_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."previous", NEW."previous_all", NEW."reason", NEW."revision_id", NEW."series_id", NEW."trial_id", NEW."xid"); RETURN NULL;',
                            hash="b4db0a2d40e7b3679bab62c165f245921817b566",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_a7ed0",
                            table="trials_signature",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "signature",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_signatureevent" ("at", "canon", "canonical", "digest", "id", "meaning", "person_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "previous", "previous_all", "reason", "revision_id", "series_id", "trial_id", "xid") VALUES (OLD."at", OLD."canon", OLD."canonical", OLD."digest", OLD."id", OLD."meaning", OLD."person_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."previous", OLD."previous_all", OLD."reason", OLD."revision_id", OLD."series_id", OLD."trial_id", OLD."xid"); RETURN NULL;',
                            hash="0c9adc27f28374929fa0f1edfa198c25ff1b9636",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_327f5",
                            table="trials_signature",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "signatureevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="775d5f14c17854bf2766069967a4cec80c9dec02",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_f5944",
                            table="trials_signatureevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "signatureevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="01b54a1645757a2d3b1e749aec4e77629e6f5ffb",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_10bfa",
                            table="trials_signatureevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "step",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_stepevent" ("criterion_id", "id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "says", "value") VALUES (NEW."criterion_id", NEW."id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."says", NEW."value"); RETURN NULL;',
                            hash="1b4390b9937cc604149b074f8f1d17cb4a2c7848",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_5d5ad",
                            table="trials_step",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "step",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_stepevent" ("criterion_id", "id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "says", "value") VALUES (NEW."criterion_id", NEW."id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."says", NEW."value"); RETURN NULL;',
                            hash="36044bd0da3a224ababd3a23182ab685984ba648",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_99515",
                            table="trials_step",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "step",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_stepevent" ("criterion_id", "id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "says", "value") VALUES (OLD."criterion_id", OLD."id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."says", OLD."value"); RETURN NULL;',
                            hash="5956a1f014478694304eec9bb7550757e87c7637",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_e923a",
                            table="trials_step",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "stepevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="bce18eeaafca2ca5a69e53c2c437419cf2b2ac0e",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_ba04b",
                            table="trials_stepevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "stepevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="76948adf22d4841239690088f491012dbb0b4872",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_104c1",
                            table="trials_stepevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "storedtin",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_storedtinevent" ("appearance", "days", "id", "opened_at", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "stored_at", "temperature_c", "trial_id") VALUES (NEW."appearance", NEW."days", NEW."id", NEW."opened_at", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."stored_at", NEW."temperature_c", NEW."trial_id"); RETURN NULL;',
                            hash="b47efab4607549731345162131291d8c8a20acde",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_cbca9",
                            table="trials_storedtin",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "storedtin",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_storedtinevent" ("appearance", "days", "id", "opened_at", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "stored_at", "temperature_c", "trial_id") VALUES (NEW."appearance", NEW."days", NEW."id", NEW."opened_at", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."stored_at", NEW."temperature_c", NEW."trial_id"); RETURN NULL;',
                            hash="afa4d3688d021e30c7d04e0412064dcf3d8dedef",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_fa651",
                            table="trials_storedtin",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "storedtin",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_storedtinevent" ("appearance", "days", "id", "opened_at", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "stored_at", "temperature_c", "trial_id") VALUES (OLD."appearance", OLD."days", OLD."id", OLD."opened_at", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."stored_at", OLD."temperature_c", OLD."trial_id"); RETURN NULL;',
                            hash="b095514abdd5239800d9bb208d80d42a67f8bdca",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_e39cf",
                            table="trials_storedtin",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "storedtinevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="9cb061a5d08494dea547d70e38826ead44a1de26",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_4738a",
                            table="trials_storedtinevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "storedtinevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="7438d7817b177ee6e40c70f10b910bbf2599a719",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_bf35e",
                            table="trials_storedtinevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "trial",
                    pgtrigger.compiler.Trigger(
                        name="trial_frozen",
                        sql=trials.models.history.UnconditionalSql(
                            declare="DECLARE row RECORD;",
                            func="IF TG_OP = 'DELETE' THEN row := OLD; ELSE row := NEW; END IF; IF trials_frozen(row.series_id, row.id) THEN RAISE EXCEPTION 'this is signed: it changes only by an amendment with its reason' USING ERRCODE = 'check_violation', CONSTRAINT = 'trial_frozen'; END IF; RETURN row;",
                            hash="9f5ed4a4fcfc8e375ad810b71459b16e3be83f3f",
                            operation="INSERT OR UPDATE OR DELETE",
                            pgid="pgtrigger_trial_frozen_1107e",
                            table="trials_trial",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "trial",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_trialevent" ("air_c", "batch_mass_g", "code", "common_batch_id", "humidity_pct", "id", "lesson", "made_at", "made_by_id", "mixed_at", "number", "outcome", "part", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "position", "remark", "series_id", "state", "topped_up_from_id", "unfair_because") VALUES (NEW."air_c", NEW."batch_mass_g", NEW."code", NEW."common_batch_id", NEW."humidity_pct", NEW."id", NEW."lesson", NEW."made_at", NEW."made_by_id", NEW."mixed_at", NEW."number", NEW."outcome", NEW."part", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."position", NEW."remark", NEW."series_id", NEW."state", NEW."topped_up_from_id", NEW."unfair_because"); RETURN NULL;',
                            hash="822a2e49125b46220e189503ec4629e7a57de5c2",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_0727b",
                            table="trials_trial",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "trial",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_trialevent" ("air_c", "batch_mass_g", "code", "common_batch_id", "humidity_pct", "id", "lesson", "made_at", "made_by_id", "mixed_at", "number", "outcome", "part", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "position", "remark", "series_id", "state", "topped_up_from_id", "unfair_because") VALUES (NEW."air_c", NEW."batch_mass_g", NEW."code", NEW."common_batch_id", NEW."humidity_pct", NEW."id", NEW."lesson", NEW."made_at", NEW."made_by_id", NEW."mixed_at", NEW."number", NEW."outcome", NEW."part", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."position", NEW."remark", NEW."series_id", NEW."state", NEW."topped_up_from_id", NEW."unfair_because"); RETURN NULL;',
                            hash="168be3335db0e7697cd5878f00d5f0f9dee326ef",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_6a86a",
                            table="trials_trial",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "trial",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_trialevent" ("air_c", "batch_mass_g", "code", "common_batch_id", "humidity_pct", "id", "lesson", "made_at", "made_by_id", "mixed_at", "number", "outcome", "part", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "position", "remark", "series_id", "state", "topped_up_from_id", "unfair_because") VALUES (OLD."air_c", OLD."batch_mass_g", OLD."code", OLD."common_batch_id", OLD."humidity_pct", OLD."id", OLD."lesson", OLD."made_at", OLD."made_by_id", OLD."mixed_at", OLD."number", OLD."outcome", OLD."part", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."position", OLD."remark", OLD."series_id", OLD."state", OLD."topped_up_from_id", OLD."unfair_because"); RETURN NULL;',
                            hash="a3ec395475f7b57276b09a4504673b890c85981c",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_0ffe9",
                            table="trials_trial",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "trialevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="a26e79f35628251e6e290dacd5f2bd31e8611f4f",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_ff5ed",
                            table="trials_trialevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "trialevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="89774bf0164d822225994be2be470e1cac002a9f",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_a981d",
                            table="trials_trialevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "weighing",
                    pgtrigger.compiler.Trigger(
                        name="weighing_frozen",
                        sql=trials.models.history.UnconditionalSql(
                            declare="DECLARE row RECORD;",
                            func="IF TG_OP = 'DELETE' THEN row := OLD; ELSE row := NEW; END IF; IF trials_trial_frozen(row.trial_id) THEN RAISE EXCEPTION 'this is signed: it changes only by an amendment with its reason' USING ERRCODE = 'check_violation', CONSTRAINT = 'weighing_frozen'; END IF; RETURN row;",
                            hash="849bf111a3cc2797246b4a700412749763e7d86a",
                            operation="INSERT OR UPDATE OR DELETE",
                            pgid="pgtrigger_weighing_frozen_dd6b8",
                            table="trials_weighing",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "weighing",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_weighingevent" ("at", "balance_id", "cumulative", "dosage_id", "id", "letter", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "position", "reading_g", "trial_id", "word") VALUES (NEW."at", NEW."balance_id", NEW."cumulative", NEW."dosage_id", NEW."id", NEW."letter", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."position", NEW."reading_g", NEW."trial_id", NEW."word"); RETURN NULL;',
                            hash="ed0aaeea4fc277bc0fe910eb6b04bcc3e7cd9cec",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_5e230",
                            table="trials_weighing",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "weighing",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_weighingevent" ("at", "balance_id", "cumulative", "dosage_id", "id", "letter", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "position", "reading_g", "trial_id", "word") VALUES (NEW."at", NEW."balance_id", NEW."cumulative", NEW."dosage_id", NEW."id", NEW."letter", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."position", NEW."reading_g", NEW."trial_id", NEW."word"); RETURN NULL;',
                            hash="ae9e717ef56b6a7824ad5e2ca3ffd939325087db",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_9f778",
                            table="trials_weighing",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "weighing",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_weighingevent" ("at", "balance_id", "cumulative", "dosage_id", "id", "letter", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "position", "reading_g", "trial_id", "word") VALUES (OLD."at", OLD."balance_id", OLD."cumulative", OLD."dosage_id", OLD."id", OLD."letter", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."position", OLD."reading_g", OLD."trial_id", OLD."word"); RETURN NULL;',
                            hash="5b20cb84e20eed9e2e25411e677acf0d6cea0ec8",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_1b3de",
                            table="trials_weighing",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "weighingevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="a2e4467fe0e3371a1887cd093197e3cfa273385e",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_4b685",
                            table="trials_weighingevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "weighingevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="666ef3280b6466571415ac0303653262130fa0f4",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_80e50",
                            table="trials_weighingevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "wetreading",
                    pgtrigger.compiler.Trigger(
                        name="wet_reading_frozen",
                        sql=trials.models.history.UnconditionalSql(
                            declare="DECLARE row RECORD;",
                            func="IF TG_OP = 'DELETE' THEN row := OLD; ELSE row := NEW; END IF; IF trials_trial_frozen(row.trial_id) THEN RAISE EXCEPTION 'this is signed: it changes only by an amendment with its reason' USING ERRCODE = 'check_violation', CONSTRAINT = 'wet_reading_frozen'; END IF; RETURN row;",
                            hash="34e0f2041fd3ea84edb26efd94b15812bca0e93c",
                            operation="INSERT OR UPDATE OR DELETE",
                            pgid="pgtrigger_wet_reading_frozen_d34c5",
                            table="trials_wetreading",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "wetreading",
                    pgtrigger.compiler.Trigger(
                        name="batch_reading_frozen",
                        sql=trials.models.history.UnconditionalSql(
                            declare="DECLARE row RECORD;",
                            func="IF TG_OP = 'DELETE' THEN row := OLD; ELSE row := NEW; END IF; IF trials_batch_frozen(row.common_batch_id) THEN RAISE EXCEPTION 'this is signed: it changes only by an amendment with its reason' USING ERRCODE = 'check_violation', CONSTRAINT = 'batch_reading_frozen'; END IF; RETURN row;",
                            hash="c4721039f231b603c0093d3c5d2a2dbebf8085ef",
                            operation="INSERT OR UPDATE OR DELETE",
                            pgid="pgtrigger_batch_reading_frozen_a6fd1",
                            table="trials_wetreading",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "wetreading",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_wetreadingevent" ("at", "common_batch_id", "id", "method", "minutes", "person_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "quantity", "trial_id", "value", "where", "word") VALUES (NEW."at", NEW."common_batch_id", NEW."id", NEW."method", NEW."minutes", NEW."person_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."quantity", NEW."trial_id", NEW."value", NEW."where", NEW."word"); RETURN NULL;',
                            hash="a12b5a3bc6a4e9d7e117f4fc1cf1eea1a20c0947",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_56aa8",
                            table="trials_wetreading",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "wetreading",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_wetreadingevent" ("at", "common_batch_id", "id", "method", "minutes", "person_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "quantity", "trial_id", "value", "where", "word") VALUES (NEW."at", NEW."common_batch_id", NEW."id", NEW."method", NEW."minutes", NEW."person_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."quantity", NEW."trial_id", NEW."value", NEW."where", NEW."word"); RETURN NULL;',
                            hash="a8cdcffdd1768e083d6c2fa5d0f06e57f23029ae",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_2531c",
                            table="trials_wetreading",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "wetreading",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_wetreadingevent" ("at", "common_batch_id", "id", "method", "minutes", "person_id", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "quantity", "trial_id", "value", "where", "word") VALUES (OLD."at", OLD."common_batch_id", OLD."id", OLD."method", OLD."minutes", OLD."person_id", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."quantity", OLD."trial_id", OLD."value", OLD."where", OLD."word"); RETURN NULL;',
                            hash="60608ed1c9dc50a7ad89854f71daedd03ff2c329",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_576cc",
                            table="trials_wetreading",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "wetreadingevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="2ae8fd7ec470145a7af7ae8d7be44c50efa734e3",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_c5fb2",
                            table="trials_wetreadingevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "wetreadingevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="ecdae49558c9658bfaefd05029753ddb9b27f981",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_65528",
                            table="trials_wetreadingevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "working",
                    pgtrigger.compiler.Trigger(
                        name="working_frozen",
                        sql=trials.models.history.UnconditionalSql(
                            declare="DECLARE row RECORD;",
                            func="IF TG_OP = 'DELETE' THEN row := OLD; ELSE row := NEW; END IF; IF trials_trial_frozen(row.trial_id) THEN RAISE EXCEPTION 'this is signed: it changes only by an amendment with its reason' USING ERRCODE = 'check_violation', CONSTRAINT = 'working_frozen'; END IF; RETURN row;",
                            hash="89e1ea0a4708a601ff6824347f0a7235e35d0950",
                            operation="INSERT OR UPDATE OR DELETE",
                            pgid="pgtrigger_working_frozen_bd960",
                            table="trials_working",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "working",
                    pgtrigger.compiler.Trigger(
                        name="insert_insert",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_workingevent" ("blade_mm", "equipment_id", "id", "kind", "minutes", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "position", "remark", "rpm", "temperature_c", "trial_id", "vacuum_mbar", "vessel_mm") VALUES (NEW."blade_mm", NEW."equipment_id", NEW."id", NEW."kind", NEW."minutes", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'insert\', NEW."id", NEW."position", NEW."remark", NEW."rpm", NEW."temperature_c", NEW."trial_id", NEW."vacuum_mbar", NEW."vessel_mm"); RETURN NULL;',
                            hash="78225aff3b2877672e1ce29046de776d5f01157e",
                            operation="INSERT",
                            pgid="pgtrigger_insert_insert_b8ab1",
                            table="trials_working",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "working",
                    pgtrigger.compiler.Trigger(
                        name="update_update",
                        sql=trials.models.history.UnconditionalSql(
                            condition="WHEN (OLD.* IS DISTINCT FROM NEW.*)",
                            func='INSERT INTO "trials_workingevent" ("blade_mm", "equipment_id", "id", "kind", "minutes", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "position", "remark", "rpm", "temperature_c", "trial_id", "vacuum_mbar", "vessel_mm") VALUES (NEW."blade_mm", NEW."equipment_id", NEW."id", NEW."kind", NEW."minutes", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'update\', NEW."id", NEW."position", NEW."remark", NEW."rpm", NEW."temperature_c", NEW."trial_id", NEW."vacuum_mbar", NEW."vessel_mm"); RETURN NULL;',
                            hash="baf29be67fe6a4fb2b5f65ab6b45284e0c06f4a4",
                            operation="UPDATE",
                            pgid="pgtrigger_update_update_eea0f",
                            table="trials_working",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "working",
                    pgtrigger.compiler.Trigger(
                        name="delete_delete",
                        sql=trials.models.history.UnconditionalSql(
                            func='INSERT INTO "trials_workingevent" ("blade_mm", "equipment_id", "id", "kind", "minutes", "pgh_context", "pgh_context_id", "pgh_created_at", "pgh_label", "pgh_obj_id", "position", "remark", "rpm", "temperature_c", "trial_id", "vacuum_mbar", "vessel_mm") VALUES (OLD."blade_mm", OLD."equipment_id", OLD."id", OLD."kind", OLD."minutes", COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_metadata\', TRUE), \'\'), NULL)::JSONB, COALESCE(NULLIF(CURRENT_SETTING(\'pghistory.context_id\', TRUE), \'\'), NULL)::UUID, NOW(), \'delete\', OLD."id", OLD."position", OLD."remark", OLD."rpm", OLD."temperature_c", OLD."trial_id", OLD."vacuum_mbar", OLD."vessel_mm"); RETURN NULL;',
                            hash="539ee30832fc53502f28185b44f2cabe787dd8a5",
                            operation="DELETE",
                            pgid="pgtrigger_delete_delete_74d0c",
                            table="trials_working",
                            when="AFTER",
                        ),
                    ),
                ),
                (
                    "workingevent",
                    pgtrigger.compiler.Trigger(
                        name="append_only",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'append_only';",
                            hash="f9c8a3aa20c8b124400fa24c86e162c83b3bc9a0",
                            operation="UPDATE OR DELETE",
                            pgid="pgtrigger_append_only_5ac16",
                            table="trials_workingevent",
                            when="BEFORE",
                        ),
                    ),
                ),
                (
                    "workingevent",
                    pgtrigger.compiler.Trigger(
                        name="keep_all",
                        sql=trials.models.history.UnconditionalSql(
                            func="RAISE EXCEPTION 'history is append-only' USING ERRCODE = 'check_violation', CONSTRAINT = 'keep_all';",
                            hash="3a0a7db9b2b12e6c524d34731dd81ecb6d68e7c5",
                            level="STATEMENT",
                            operation="TRUNCATE",
                            pgid="pgtrigger_keep_all_2e8cf",
                            table="trials_workingevent",
                            when="BEFORE",
                        ),
                    ),
                ),
            ],
        ),
    ]
