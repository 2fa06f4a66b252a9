import django.contrib.postgres.fields
import django.contrib.postgres.indexes
import django.contrib.postgres.search
import django.db.models.constraints
import django.db.models.deletion
import pghistory.utils
import trials.models.fields
import trials.models.history
from django.conf import settings
from django.db import migrations, models


class Migration(migrations.Migration):
    initial = True

    dependencies = []

    operations = [
        migrations.CreateModel(
            name="RawMaterial",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("code", models.CharField(max_length=20, unique=True)),
                ("name", models.CharField(max_length=120)),
                ("supplier", models.CharField(blank=True, default="", max_length=120)),
                (
                    "function",
                    models.CharField(
                        choices=[
                            ("binder", "binder"),
                            ("reactive diluent", "reactive diluent"),
                            ("hardener", "hardener"),
                            ("pigment", "pigment"),
                            ("filler", "filler"),
                            ("solvent", "solvent"),
                            ("plasticiser", "plasticiser"),
                            ("catalyst", "catalyst"),
                            ("water", "water"),
                            ("water scavenger", "water scavenger"),
                            ("additive", "additive"),
                            ("air-release candidate", "air-release candidate"),
                        ],
                        max_length=24,
                    ),
                ),
                (
                    "density_g_ml",
                    trials.models.fields.Number(blank=True, help_text="at 23 °C", null=True, verbose_name="density"),
                ),
                (
                    "non_volatile_pct",
                    trials.models.fields.Number(
                        blank=True, help_text="by mass", null=True, verbose_name="non-volatile content"
                    ),
                ),
                (
                    "voc_pct",
                    trials.models.fields.Number(
                        blank=True, help_text="by mass; boiling point up to 250 °C", null=True, verbose_name="VOC"
                    ),
                ),
                (
                    "active_pct",
                    trials.models.fields.Number(
                        blank=True, help_text="of the material as supplied", null=True, verbose_name="active content"
                    ),
                ),
                (
                    "diisocyanate_pct",
                    trials.models.fields.Number(
                        blank=True, help_text="by mass", null=True, verbose_name="monomeric diisocyanate"
                    ),
                ),
                (
                    "price_per_kg",
                    trials.models.fields.Number(blank=True, help_text="per kg", null=True, verbose_name="price"),
                ),
                (
                    "hazards",
                    django.contrib.postgres.fields.ArrayField(
                        base_field=models.CharField(max_length=8),
                        blank=True,
                        default=list,
                        size=None,
                        verbose_name="hazard statements",
                    ),
                ),
                ("sheet_issued", models.DateField(blank=True, null=True, verbose_name="safety data sheet of")),
                ("remarks", models.TextField(blank=True, default="")),
                ("withdrawn", models.BooleanField(default=False, verbose_name="no longer used")),
            ],
            options={
                "constraints": [
                    models.CheckConstraint(
                        condition=models.Q(
                            (
                                "function__in",
                                [
                                    "binder",
                                    "reactive diluent",
                                    "hardener",
                                    "pigment",
                                    "filler",
                                    "solvent",
                                    "plasticiser",
                                    "catalyst",
                                    "water",
                                    "water scavenger",
                                    "additive",
                                    "air-release candidate",
                                ],
                            )
                        ),
                        name="raw_material_function_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("density_g_ml__isnull", True), ("density_g_ml__gt", 0), _connector="OR"),
                        name="raw_material_density_g_ml_positive",
                        violation_error_message="Density must be above 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("non_volatile_pct__isnull", True),
                            models.Q(("non_volatile_pct__gte", 0), ("non_volatile_pct__lte", 100)),
                            _connector="OR",
                        ),
                        name="raw_material_non_volatile_pct_per_cent",
                        violation_error_message="Non volatile must be from 0 to 100.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("voc_pct__isnull", True),
                            models.Q(("voc_pct__gte", 0), ("voc_pct__lte", 100)),
                            _connector="OR",
                        ),
                        name="raw_material_voc_pct_per_cent",
                        violation_error_message="Voc must be from 0 to 100.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("active_pct__isnull", True),
                            models.Q(("active_pct__gte", 0), ("active_pct__lte", 100)),
                            _connector="OR",
                        ),
                        name="raw_material_active_pct_per_cent",
                        violation_error_message="Active must be from 0 to 100.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("diisocyanate_pct__isnull", True),
                            models.Q(("diisocyanate_pct__gte", 0), ("diisocyanate_pct__lte", 100)),
                            _connector="OR",
                        ),
                        name="raw_material_diisocyanate_pct_per_cent",
                        violation_error_message="Diisocyanate must be from 0 to 100.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("price_per_kg__isnull", True), ("price_per_kg__gte", 0), _connector="OR"),
                        name="raw_material_price_per_kg_not_negative",
                        violation_error_message="Price must not be below 0.",
                    ),
                ],
            },
        ),
        migrations.CreateModel(
            name="Candidate",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                (
                    "chemistry",
                    models.CharField(
                        choices=[
                            ("concentrated polysiloxane", "concentrated polysiloxane"),
                            ("polysiloxane solution", "polysiloxane solution"),
                            ("modified polysiloxane", "modified polysiloxane"),
                            ("silicone-free polymer", "silicone-free polymer"),
                            ("mineral oil", "mineral oil"),
                            ("fluorinated", "fluorinated"),
                            ("wax or particle dispersion", "wax or particle dispersion"),
                        ],
                        max_length=28,
                    ),
                ),
                (
                    "carrier",
                    models.CharField(
                        choices=[
                            ("none", "none"),
                            ("solvent", "solvent"),
                            ("plasticiser", "plasticiser"),
                            ("reactive", "reactive"),
                        ],
                        max_length=12,
                    ),
                ),
                (
                    "carrier_pct",
                    trials.models.fields.Number(
                        blank=True,
                        help_text="of the additive as supplied",
                        null=True,
                        verbose_name="share of carrier",
                    ),
                ),
                ("silicone", models.BooleanField(verbose_name="contains silicone")),
                ("strength", models.PositiveSmallIntegerField(help_text="1 mild to 5 strong")),
                (
                    "macro_foam",
                    models.PositiveSmallIntegerField(help_text="1 to 5", verbose_name="against macro-foam"),
                ),
                ("air_release", models.PositiveSmallIntegerField(help_text="1 to 5", verbose_name="for air release")),
                (
                    "tip_speed_m_s",
                    trials.models.fields.Number(
                        blank=True, help_text="at least", null=True, verbose_name="tip speed asked for"
                    ),
                ),
                (
                    "minutes",
                    trials.models.fields.Number(
                        blank=True, help_text="at least", null=True, verbose_name="time asked for"
                    ),
                ),
                (
                    "from_pct",
                    trials.models.fields.Number(
                        blank=True, help_text="on total, on top, as supplied", null=True, verbose_name="window from"
                    ),
                ),
                (
                    "to_pct",
                    trials.models.fields.Number(
                        blank=True, help_text="on total, on top, as supplied", null=True, verbose_name="window to"
                    ),
                ),
                (
                    "highest_tried_pct",
                    trials.models.fields.Number(
                        blank=True, help_text="on total, on top, as supplied", null=True, verbose_name="highest tried"
                    ),
                ),
                (
                    "stages",
                    django.contrib.postgres.fields.ArrayField(
                        base_field=models.CharField(
                            choices=[
                                ("grind", "grind"),
                                ("let-down", "let-down"),
                                ("post-addition", "post-addition"),
                            ],
                            max_length=16,
                        ),
                        blank=True,
                        default=list,
                        size=None,
                    ),
                ),
                (
                    "diluted_in",
                    models.TextField(
                        blank=True, default="", help_text="what it may be diluted in; empty: never dilute"
                    ),
                ),
                ("cautions", models.TextField(blank=True, default="")),
                (
                    "material",
                    models.OneToOneField(
                        on_delete=django.db.models.deletion.PROTECT, related_name="candidate", to="trials.rawmaterial"
                    ),
                ),
            ],
            options={
                "constraints": [
                    models.CheckConstraint(
                        condition=models.Q(
                            (
                                "chemistry__in",
                                [
                                    "concentrated polysiloxane",
                                    "polysiloxane solution",
                                    "modified polysiloxane",
                                    "silicone-free polymer",
                                    "mineral oil",
                                    "fluorinated",
                                    "wax or particle dispersion",
                                ],
                            )
                        ),
                        name="candidate_chemistry_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("carrier__in", ["none", "solvent", "plasticiser", "reactive"])),
                        name="candidate_carrier_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("strength__gte", 1), ("strength__lte", 5)),
                        name="candidate_strength_1_to_5",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("macro_foam__gte", 1), ("macro_foam__lte", 5)),
                        name="candidate_macro_foam_1_to_5",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("air_release__gte", 1), ("air_release__lte", 5)),
                        name="candidate_air_release_1_to_5",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("tip_speed_m_s__isnull", True), ("tip_speed_m_s__gt", 0), _connector="OR"
                        ),
                        name="candidate_tip_speed_m_s_positive",
                        violation_error_message="Tip speed must be above 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("minutes__isnull", True), ("minutes__gt", 0), _connector="OR"),
                        name="candidate_minutes_positive",
                        violation_error_message="Minutes must be above 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("from_pct__isnull", True), ("from_pct__gt", 0), _connector="OR"),
                        name="candidate_from_pct_positive",
                        violation_error_message="From must be above 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("to_pct__isnull", True), ("to_pct__gt", 0), _connector="OR"),
                        name="candidate_to_pct_positive",
                        violation_error_message="To must be above 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("highest_tried_pct__isnull", True), ("highest_tried_pct__gte", 0), _connector="OR"
                        ),
                        name="candidate_highest_tried_pct_not_negative",
                        violation_error_message="Highest tried must not be below 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("carrier_pct__isnull", True), ("carrier_pct__gte", 0), _connector="OR"),
                        name="candidate_carrier_pct_not_negative",
                        violation_error_message="Carrier must not be below 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("from_pct__isnull", True),
                            ("to_pct__isnull", True),
                            ("to_pct__gte", models.F("from_pct")),
                            _connector="OR",
                        ),
                        name="candidate_window_in_order",
                    ),
                ],
            },
        ),
        migrations.CreateModel(
            name="Person",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("password", models.CharField(max_length=128, verbose_name="password")),
                ("last_login", models.DateTimeField(blank=True, null=True, verbose_name="last login")),
                ("sign_in_name", models.CharField(max_length=40, unique=True, verbose_name="sign-in name")),
                ("full_name", models.CharField(max_length=120, verbose_name="name")),
                ("initials", models.CharField(max_length=6)),
                (
                    "role",
                    models.CharField(
                        choices=[
                            ("bench", "bench"),
                            ("supervisor", "supervisor"),
                            ("reader", "reader"),
                            ("administrator", "administrator"),
                        ],
                        default="bench",
                        max_length=16,
                    ),
                ),
                ("is_active", models.BooleanField(default=True, verbose_name="may sign in")),
            ],
            options={
                "constraints": [
                    models.CheckConstraint(
                        condition=models.Q(("role__in", ["bench", "supervisor", "reader", "administrator"])),
                        name="person_role_known",
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="Base",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("restricted", models.BooleanField(default=False, verbose_name="only for named people")),
                ("code", models.CharField(max_length=20, unique=True)),
                ("name", models.CharField(max_length=120)),
                (
                    "chemistry",
                    models.CharField(
                        choices=[
                            ("epoxy-amine", "epoxy"),
                            ("polyurethane", "polyurethane"),
                            ("polyaspartic", "polyaspartic"),
                            ("other", "other"),
                        ],
                        max_length=16,
                        verbose_name="binder chemistry",
                    ),
                ),
                (
                    "field",
                    models.CharField(
                        choices=[
                            ("floor", "floor coating"),
                            ("casting resin", "casting resin"),
                            ("marine", "marine and protective"),
                            ("adhesive", "adhesive or sealant"),
                        ],
                        max_length=16,
                        verbose_name="application field",
                    ),
                ),
                (
                    "kind",
                    models.CharField(
                        choices=[("recipe", "recipe"), ("black box", "black box")],
                        max_length=10,
                        verbose_name="known as",
                    ),
                ),
                ("film_um", trials.models.fields.Number(blank=True, null=True, verbose_name="film thickness meant")),
                (
                    "additive",
                    models.CharField(
                        choices=[("no", "no"), ("may", "may contain one"), ("yes", "contains one already")],
                        default="no",
                        max_length=4,
                        verbose_name="defoamer in it",
                    ),
                ),
                (
                    "additive_note",
                    models.TextField(blank=True, default="", verbose_name="which, and why it stays in"),
                ),
                ("remarks", models.TextField(blank=True, default="")),
                (
                    "owner",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.PROTECT, related_name="bases", to=settings.AUTH_USER_MODEL
                    ),
                ),
            ],
            options={
                "constraints": [
                    models.CheckConstraint(
                        condition=models.Q(
                            ("chemistry__in", ["epoxy-amine", "polyurethane", "polyaspartic", "other"])
                        ),
                        name="base_chemistry_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("field__in", ["floor", "casting resin", "marine", "adhesive"])),
                        name="base_field_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("kind__in", ["recipe", "black box"])), name="base_kind_known"
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("additive__in", ["no", "may", "yes"])), name="base_additive_known"
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("film_um__isnull", True), ("film_um__gt", 0), _connector="OR"),
                        name="base_film_um_positive",
                        violation_error_message="Film must be above 0.",
                    ),
                ],
            },
        ),
        migrations.CreateModel(
            name="Revision",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("number", models.PositiveSmallIntegerField()),
                ("why", models.TextField(blank=True, default="")),
                (
                    "air_free_density_g_ml",
                    trials.models.fields.Number(
                        blank=True, help_text="measured", null=True, verbose_name="air-free density of the mix"
                    ),
                ),
                (
                    "air_free_method",
                    models.CharField(blank=True, default="", max_length=120, verbose_name="how measured"),
                ),
                (
                    "viscosity_mpa_s",
                    trials.models.fields.Number(
                        blank=True, help_text="at 23 °C", null=True, verbose_name="viscosity of the mix"
                    ),
                ),
                ("yield_pa", trials.models.fields.Number(blank=True, null=True, verbose_name="yield value")),
                (
                    "pot_life_min",
                    trials.models.fields.Number(
                        blank=True, help_text="at 23 °C", null=True, verbose_name="pot life of 100 g"
                    ),
                ),
                ("made_at", models.DateTimeField()),
                ("frozen_at", models.DateTimeField(blank=True, null=True)),
                (
                    "base",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.PROTECT, related_name="revisions", to="trials.base"
                    ),
                ),
                (
                    "made_by",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.PROTECT, related_name="+", to=settings.AUTH_USER_MODEL
                    ),
                ),
            ],
            options={
                "constraints": [
                    models.UniqueConstraint(fields=("base", "number"), name="revision_number_once"),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("air_free_density_g_ml__isnull", True), ("air_free_density_g_ml__gt", 0), _connector="OR"
                        ),
                        name="revision_air_free_density_g_ml_positive",
                        violation_error_message="Air free density must be above 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("viscosity_mpa_s__isnull", True), ("viscosity_mpa_s__gt", 0), _connector="OR"
                        ),
                        name="revision_viscosity_mpa_s_positive",
                        violation_error_message="Viscosity must be above 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("yield_pa__isnull", True), ("yield_pa__gt", 0), _connector="OR"),
                        name="revision_yield_pa_positive",
                        violation_error_message="Yield must be above 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("pot_life_min__isnull", True), ("pot_life_min__gt", 0), _connector="OR"),
                        name="revision_pot_life_min_positive",
                        violation_error_message="Pot life must be above 0.",
                    ),
                ],
            },
        ),
        migrations.CreateModel(
            name="Component",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("letter", models.CharField(choices=[("A", "A"), ("B", "B"), ("C", "C")], max_length=1)),
                ("name", models.CharField(blank=True, default="", max_length=120)),
                ("parts", trials.models.fields.Number(verbose_name="mixing parts by mass")),
                (
                    "density_g_ml",
                    trials.models.fields.Number(
                        blank=True, help_text="measured or as stated", null=True, verbose_name="density"
                    ),
                ),
                (
                    "viscosity_mpa_s",
                    trials.models.fields.Number(
                        blank=True, help_text="at 23 °C", null=True, verbose_name="viscosity"
                    ),
                ),
                (
                    "non_volatile_pct",
                    trials.models.fields.Number(
                        blank=True, help_text="as stated", null=True, verbose_name="non-volatile content"
                    ),
                ),
                (
                    "water_pct",
                    trials.models.fields.Number(
                        blank=True, help_text="Karl Fischer", null=True, verbose_name="water"
                    ),
                ),
                ("batch", models.CharField(blank=True, default="", max_length=60, verbose_name="customer's batch")),
                ("received", models.DateField(blank=True, null=True)),
                (
                    "revision",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.CASCADE, related_name="components", to="trials.revision"
                    ),
                ),
            ],
            options={
                "constraints": [
                    models.UniqueConstraint(fields=("revision", "letter"), name="component_letter_once"),
                    models.CheckConstraint(
                        condition=models.Q(("letter__in", ["A", "B", "C"])), name="component_letter_known"
                    ),
                    models.CheckConstraint(condition=models.Q(("parts__gt", 0)), name="component_parts_positive"),
                    models.CheckConstraint(
                        condition=models.Q(("density_g_ml__isnull", True), ("density_g_ml__gt", 0), _connector="OR"),
                        name="component_density_g_ml_positive",
                        violation_error_message="Density must be above 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("viscosity_mpa_s__isnull", True), ("viscosity_mpa_s__gt", 0), _connector="OR"
                        ),
                        name="component_viscosity_mpa_s_positive",
                        violation_error_message="Viscosity must be above 0.",
                    ),
                ],
            },
        ),
        migrations.CreateModel(
            name="CommonBatch",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                (
                    "letter",
                    models.CharField(
                        choices=[("A", "A"), ("B", "B"), ("C", "C")],
                        default="A",
                        max_length=1,
                        verbose_name="component",
                    ),
                ),
                ("number", models.CharField(max_length=30, unique=True)),
                ("made_at", models.DateTimeField()),
                ("mass_g", trials.models.fields.Number(blank=True, null=True, verbose_name="mass")),
                (
                    "water_pct",
                    trials.models.fields.Number(
                        blank=True, help_text="Karl Fischer", null=True, verbose_name="water"
                    ),
                ),
                (
                    "viscosity_mpa_s",
                    trials.models.fields.Number(
                        blank=True, help_text="at 23 °C", null=True, verbose_name="viscosity"
                    ),
                ),
                (
                    "density_g_ml",
                    trials.models.fields.Number(
                        blank=True, help_text="free of air", null=True, verbose_name="density"
                    ),
                ),
                ("remarks", models.TextField(blank=True, default="")),
                (
                    "made_by",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.PROTECT, related_name="+", to=settings.AUTH_USER_MODEL
                    ),
                ),
                (
                    "revision",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.PROTECT,
                        related_name="common_batches",
                        to="trials.revision",
                    ),
                ),
            ],
            options={
                "constraints": [
                    models.CheckConstraint(
                        condition=models.Q(("letter__in", ["A", "B", "C"])), name="common_batch_letter_known"
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("mass_g__isnull", True), ("mass_g__gt", 0), _connector="OR"),
                        name="common_batch_mass_g_positive",
                        violation_error_message="Mass must be above 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("viscosity_mpa_s__isnull", True), ("viscosity_mpa_s__gt", 0), _connector="OR"
                        ),
                        name="common_batch_viscosity_mpa_s_positive",
                        violation_error_message="Viscosity must be above 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("density_g_ml__isnull", True), ("density_g_ml__gt", 0), _connector="OR"),
                        name="common_batch_density_g_ml_positive",
                        violation_error_message="Density must be above 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("water_pct__isnull", True),
                            models.Q(("water_pct__gte", 0), ("water_pct__lte", 100)),
                            _connector="OR",
                        ),
                        name="common_batch_water_pct_per_cent",
                        violation_error_message="Water must be from 0 to 100.",
                    ),
                ],
            },
        ),
        migrations.CreateModel(
            name="Enquiry",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("restricted", models.BooleanField(default=False, verbose_name="only for named people")),
                ("number", models.PositiveIntegerField(unique=True)),
                ("subject", models.CharField(max_length=160)),
                ("customer", models.CharField(blank=True, default="", max_length=120)),
                ("withheld", models.BooleanField(default=False, verbose_name="withhold the customer's name outside")),
                (
                    "field",
                    models.CharField(
                        choices=[
                            ("floor", "floor coating"),
                            ("casting resin", "casting resin"),
                            ("marine", "marine and protective"),
                            ("adhesive", "adhesive or sealant"),
                        ],
                        max_length=16,
                        verbose_name="application field",
                    ),
                ),
                ("asked", models.TextField(blank=True, default="", verbose_name="what is asked")),
                ("film_um", trials.models.fields.Number(blank=True, null=True, verbose_name="film thickness")),
                (
                    "incumbent_pct",
                    trials.models.fields.Number(
                        blank=True,
                        help_text="on total, on top, as supplied",
                        null=True,
                        verbose_name="dosage used today",
                    ),
                ),
                (
                    "incumbent_note",
                    models.CharField(blank=True, default="", max_length=160, verbose_name="used today, in words"),
                ),
                ("received", models.DateField()),
                ("due", models.DateField(blank=True, null=True)),
                ("closed", models.DateField(blank=True, null=True, verbose_name="answered on")),
                (
                    "base",
                    models.ForeignKey(
                        blank=True,
                        null=True,
                        on_delete=django.db.models.deletion.PROTECT,
                        related_name="enquiries",
                        to="trials.base",
                    ),
                ),
                (
                    "incumbent",
                    models.ForeignKey(
                        blank=True,
                        null=True,
                        on_delete=django.db.models.deletion.PROTECT,
                        related_name="+",
                        to="trials.candidate",
                        verbose_name="used today",
                    ),
                ),
                (
                    "owner",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.PROTECT,
                        related_name="enquiries",
                        to=settings.AUTH_USER_MODEL,
                    ),
                ),
            ],
            options={
                "constraints": [
                    models.CheckConstraint(
                        condition=models.Q(("field__in", ["floor", "casting resin", "marine", "adhesive"])),
                        name="enquiry_field_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("film_um__isnull", True), ("film_um__gt", 0), _connector="OR"),
                        name="enquiry_film_um_positive",
                        violation_error_message="Film must be above 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("incumbent_pct__isnull", True), ("incumbent_pct__gt", 0), _connector="OR"
                        ),
                        name="enquiry_incumbent_pct_positive",
                        violation_error_message="Incumbent must be above 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("due__isnull", True), ("due__gte", models.F("received")), _connector="OR"
                        ),
                        name="enquiry_due_after_received",
                        violation_error_message="Due must not be before received.",
                    ),
                ],
            },
        ),
        migrations.CreateModel(
            name="Series",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("restricted", models.BooleanField(default=False, verbose_name="only for named people")),
                ("number", models.PositiveIntegerField(unique=True)),
                ("title", models.CharField(max_length=160)),
                ("question", models.TextField(blank=True, default="")),
                (
                    "round",
                    models.CharField(
                        choices=[
                            ("scout", "scout"),
                            ("ladder", "ladder"),
                            ("confirm", "confirm"),
                            ("pilot", "pilot"),
                            ("plant", "plant"),
                            ("field", "field"),
                            ("complaint", "complaint"),
                        ],
                        max_length=10,
                    ),
                ),
                (
                    "batch_mass_g",
                    trials.models.fields.Number(
                        help_text="all components, free of additive", verbose_name="mix of a cup"
                    ),
                ),
                (
                    "film_um",
                    trials.models.fields.Number(
                        blank=True, help_text="wet", null=True, verbose_name="film thickness"
                    ),
                ),
                (
                    "basis",
                    models.CharField(
                        choices=[("total", "total"), ("component", "component"), ("binder solids", "binder solids")],
                        default="total",
                        max_length=14,
                    ),
                ),
                (
                    "basis_component",
                    models.CharField(
                        blank=True, choices=[("A", "A"), ("B", "B"), ("C", "C")], default="", max_length=1
                    ),
                ),
                (
                    "counting",
                    models.CharField(
                        choices=[("on top", "on top"), ("within", "within")], default="on top", max_length=8
                    ),
                ),
                (
                    "supplied",
                    models.CharField(
                        choices=[("as supplied", "as supplied"), ("active", "active")],
                        default="as supplied",
                        max_length=12,
                        verbose_name="dosage of",
                    ),
                ),
                (
                    "stage",
                    models.CharField(
                        choices=[("grind", "grind"), ("let-down", "let-down"), ("post-addition", "post-addition")],
                        default="let-down",
                        max_length=16,
                    ),
                ),
                (
                    "into",
                    models.CharField(
                        choices=[("A", "A"), ("B", "B"), ("C", "C")],
                        default="A",
                        max_length=1,
                        verbose_name="additive goes into",
                    ),
                ),
                (
                    "ratio",
                    models.CharField(
                        choices=[("as sold", "as sold"), ("corrected", "corrected for the shift")],
                        default="as sold",
                        max_length=10,
                    ),
                ),
                (
                    "ladder_pct",
                    django.contrib.postgres.fields.ArrayField(
                        base_field=trials.models.fields.Number(), blank=True, default=list, size=None
                    ),
                ),
                ("replicates", models.PositiveSmallIntegerField(default=2)),
                (
                    "order_rule",
                    models.CharField(
                        choices=[
                            ("blanks first, dosage ascending", "blanks first, dosage ascending"),
                            ("silicone-free before silicone", "silicone-free before silicone"),
                            ("random", "random"),
                        ],
                        default="blanks first, dosage ascending",
                        max_length=40,
                    ),
                ),
                ("seed", models.PositiveIntegerField(default=0)),
                ("planned_at", models.DateTimeField()),
                (
                    "outcome",
                    models.CharField(
                        blank=True,
                        choices=[
                            ("works", "works"),
                            ("works within limits", "works within limits"),
                            ("fails", "fails"),
                            ("undecided", "undecided"),
                            ("not a fair test", "not a fair test"),
                        ],
                        default="",
                        max_length=20,
                    ),
                ),
                ("conclusion", models.TextField(blank=True, default="")),
                ("lesson", models.TextField(blank=True, default="")),
                ("not_tested", models.TextField(blank=True, default="", verbose_name="what was not tested")),
                ("window_from_pct", trials.models.fields.Number(blank=True, null=True, verbose_name="window from")),
                ("window_to_pct", trials.models.fields.Number(blank=True, null=True, verbose_name="window to")),
                ("working_pct", trials.models.fields.Number(blank=True, null=True, verbose_name="working dosage")),
                (
                    "common_batch",
                    models.ForeignKey(
                        blank=True,
                        null=True,
                        on_delete=django.db.models.deletion.PROTECT,
                        related_name="series",
                        to="trials.commonbatch",
                    ),
                ),
                (
                    "enquiry",
                    models.ForeignKey(
                        blank=True,
                        null=True,
                        on_delete=django.db.models.deletion.PROTECT,
                        related_name="series",
                        to="trials.enquiry",
                    ),
                ),
                (
                    "follows",
                    models.ForeignKey(
                        blank=True,
                        null=True,
                        on_delete=django.db.models.deletion.PROTECT,
                        related_name="followed_by",
                        to="trials.series",
                    ),
                ),
                (
                    "owner",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.PROTECT,
                        related_name="series",
                        to=settings.AUTH_USER_MODEL,
                    ),
                ),
                (
                    "recommended",
                    models.ForeignKey(
                        blank=True,
                        null=True,
                        on_delete=django.db.models.deletion.PROTECT,
                        related_name="+",
                        to="trials.candidate",
                    ),
                ),
                (
                    "revision",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.PROTECT, related_name="series", to="trials.revision"
                    ),
                ),
            ],
            options={
                "constraints": [
                    models.CheckConstraint(
                        condition=models.Q(
                            ("round__in", ["scout", "ladder", "confirm", "pilot", "plant", "field", "complaint"])
                        ),
                        name="series_round_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("basis__in", ["total", "component", "binder solids"])),
                        name="series_basis_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("counting__in", ["on top", "within"])), name="series_counting_known"
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("supplied__in", ["as supplied", "active"])), name="series_supplied_known"
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("stage__in", ["grind", "let-down", "post-addition"])),
                        name="series_stage_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("ratio__in", ["as sold", "corrected"])), name="series_ratio_known"
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            (
                                "order_rule__in",
                                ["blanks first, dosage ascending", "silicone-free before silicone", "random"],
                            )
                        ),
                        name="series_order_rule_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            (
                                "outcome__in",
                                ["", "works", "works within limits", "fails", "undecided", "not a fair test"],
                            )
                        ),
                        name="series_outcome_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            models.Q(("basis", "component"), _negated=True),
                            models.Q(("basis_component", ""), _negated=True),
                            _connector="OR",
                        ),
                        name="series_basis_names_its_component",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("batch_mass_g__gt", 0)), name="series_batch_mass_positive"
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("film_um__isnull", True), ("film_um__gt", 0), _connector="OR"),
                        name="series_film_um_positive",
                        violation_error_message="Film must be above 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("window_from_pct__isnull", True), ("window_from_pct__gte", 0), _connector="OR"
                        ),
                        name="series_window_from_pct_not_negative",
                        violation_error_message="Window from must not be below 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("window_to_pct__isnull", True), ("window_to_pct__gte", 0), _connector="OR"
                        ),
                        name="series_window_to_pct_not_negative",
                        violation_error_message="Window to must not be below 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("working_pct__isnull", True), ("working_pct__gte", 0), _connector="OR"),
                        name="series_working_pct_not_negative",
                        violation_error_message="Working must not be below 0.",
                    ),
                ],
            },
        ),
        migrations.CreateModel(
            name="Trial",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("number", models.PositiveSmallIntegerField(verbose_name="cup")),
                ("code", models.CharField(max_length=16, unique=True)),
                ("position", models.PositiveSmallIntegerField()),
                (
                    "part",
                    models.CharField(
                        choices=[
                            ("treated", "treated"),
                            ("blank", "blank"),
                            ("incumbent", "incumbent"),
                            ("vacuum reference", "vacuum reference"),
                            ("clean check", "clean check"),
                        ],
                        max_length=18,
                    ),
                ),
                (
                    "batch_mass_g",
                    trials.models.fields.Number(
                        blank=True, help_text="free of additive", null=True, verbose_name="mix of this cup"
                    ),
                ),
                (
                    "state",
                    models.CharField(
                        choices=[
                            ("planned", "planned"),
                            ("mixed", "mixed"),
                            ("applied", "applied"),
                            ("read", "read"),
                            ("closed", "closed"),
                        ],
                        default="planned",
                        max_length=8,
                    ),
                ),
                ("made_at", models.DateTimeField(blank=True, null=True)),
                ("mixed_at", models.DateTimeField(blank=True, null=True, verbose_name="A and B together at")),
                ("air_c", trials.models.fields.Number(blank=True, null=True, verbose_name="air")),
                ("humidity_pct", trials.models.fields.Number(blank=True, null=True, verbose_name="humidity")),
                ("remark", models.TextField(blank=True, default="")),
                (
                    "outcome",
                    models.CharField(
                        blank=True,
                        choices=[
                            ("works", "works"),
                            ("works within limits", "works within limits"),
                            ("fails", "fails"),
                            ("undecided", "undecided"),
                            ("not a fair test", "not a fair test"),
                        ],
                        default="",
                        max_length=20,
                    ),
                ),
                ("unfair_because", models.TextField(blank=True, default="", verbose_name="not a fair test because")),
                ("lesson", models.TextField(blank=True, default="")),
                (
                    "common_batch",
                    models.ForeignKey(
                        blank=True,
                        null=True,
                        on_delete=django.db.models.deletion.PROTECT,
                        related_name="trials",
                        to="trials.commonbatch",
                    ),
                ),
                (
                    "made_by",
                    models.ForeignKey(
                        blank=True,
                        null=True,
                        on_delete=django.db.models.deletion.PROTECT,
                        related_name="+",
                        to=settings.AUTH_USER_MODEL,
                    ),
                ),
                (
                    "series",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.CASCADE, related_name="trials", to="trials.series"
                    ),
                ),
                (
                    "topped_up_from",
                    models.ForeignKey(
                        blank=True,
                        null=True,
                        on_delete=django.db.models.deletion.PROTECT,
                        related_name="top_ups",
                        to="trials.trial",
                    ),
                ),
            ],
            options={
                "constraints": [
                    models.UniqueConstraint(fields=("series", "number"), name="trial_number_once"),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("part__in", ["treated", "blank", "incumbent", "vacuum reference", "clean check"])
                        ),
                        name="trial_part_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("state__in", ["planned", "mixed", "applied", "read", "closed"])),
                        name="trial_state_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            (
                                "outcome__in",
                                ["", "works", "works within limits", "fails", "undecided", "not a fair test"],
                            )
                        ),
                        name="trial_outcome_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            models.Q(("outcome", "not a fair test"), _negated=True),
                            models.Q(("unfair_because", ""), _negated=True),
                            _connector="OR",
                        ),
                        name="trial_unfair_says_why",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("batch_mass_g__isnull", True), ("batch_mass_g__gt", 0), _connector="OR"),
                        name="trial_batch_mass_g_positive",
                        violation_error_message="Batch mass must be above 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("humidity_pct__isnull", True),
                            models.Q(("humidity_pct__gte", 0), ("humidity_pct__lte", 100)),
                            _connector="OR",
                        ),
                        name="trial_humidity_pct_per_cent",
                        violation_error_message="Humidity must be from 0 to 100.",
                    ),
                ],
            },
        ),
        migrations.CreateModel(
            name="Failure",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                (
                    "mode",
                    models.CharField(
                        choices=[
                            ("bubbles", "bubbles stay in the film"),
                            ("micro-foam", "micro-foam"),
                            ("pinholes", "pinholes"),
                            ("craters", "craters"),
                            ("fish-eyes", "fish-eyes"),
                            ("crawling", "second coat crawls"),
                            ("poor levelling", "poor levelling"),
                            ("floating", "floating"),
                            ("haze", "haze"),
                            ("bleeding", "bleeding"),
                            ("amine blush", "amine blush"),
                            ("recoat adhesion", "no adhesion of the second coat"),
                            ("lost in storage", "effect lost in storage"),
                            ("separation", "separates in the tin"),
                            ("no effect", "no effect"),
                            ("yellowing", "yellowing"),
                            ("other", "other"),
                        ],
                        max_length=20,
                    ),
                ),
                ("severity", models.PositiveSmallIntegerField(help_text="1 slight to 5 severe")),
                ("how", models.TextField(blank=True, default="", verbose_name="how it showed")),
                (
                    "cause",
                    models.CharField(
                        blank=True,
                        choices=[
                            ("entrained air", "entrained air"),
                            ("carbon dioxide", "carbon dioxide"),
                            ("outgassing", "outgassing of the substrate"),
                            ("solvent", "solvent"),
                            ("mixing", "mixing"),
                            ("contamination", "contamination"),
                            ("crystals", "crystals of the resin"),
                            ("additive haze", "haze of the additive"),
                            ("over-dosed", "over-dosed"),
                            ("under-sheared", "under-sheared"),
                            ("incompatible", "incompatible with this binder"),
                        ],
                        default="",
                        max_length=20,
                    ),
                ),
                (
                    "trial",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.CASCADE, related_name="failures", to="trials.trial"
                    ),
                ),
            ],
            options={
                "constraints": [
                    models.UniqueConstraint(fields=("trial", "mode"), name="failure_mode_once"),
                    models.CheckConstraint(
                        condition=models.Q(
                            (
                                "mode__in",
                                [
                                    "bubbles",
                                    "micro-foam",
                                    "pinholes",
                                    "craters",
                                    "fish-eyes",
                                    "crawling",
                                    "poor levelling",
                                    "floating",
                                    "haze",
                                    "bleeding",
                                    "amine blush",
                                    "recoat adhesion",
                                    "lost in storage",
                                    "separation",
                                    "no effect",
                                    "yellowing",
                                    "other",
                                ],
                            )
                        ),
                        name="failure_mode_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            (
                                "cause__in",
                                [
                                    "",
                                    "entrained air",
                                    "carbon dioxide",
                                    "outgassing",
                                    "solvent",
                                    "mixing",
                                    "contamination",
                                    "crystals",
                                    "additive haze",
                                    "over-dosed",
                                    "under-sheared",
                                    "incompatible",
                                ],
                            )
                        ),
                        name="failure_cause_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("severity__gte", 1), ("severity__lte", 5)), name="failure_severity_1_to_5"
                    ),
                ],
            },
        ),
        migrations.CreateModel(
            name="StoredTin",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("temperature_c", trials.models.fields.Number(blank=True, null=True, verbose_name="stored at")),
                ("days", models.PositiveSmallIntegerField(help_text="days", verbose_name="for")),
                ("stored_at", models.DateTimeField()),
                ("opened_at", models.DateTimeField(blank=True, null=True)),
                (
                    "appearance",
                    models.TextField(blank=True, default="", verbose_name="what stood in it before stirring"),
                ),
                (
                    "trial",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.CASCADE, related_name="stored_tins", to="trials.trial"
                    ),
                ),
            ],
            options={
                "constraints": [
                    models.CheckConstraint(
                        condition=models.Q(
                            ("opened_at__isnull", True), ("opened_at__gte", models.F("stored_at")), _connector="OR"
                        ),
                        name="tin_opened_after_stored",
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="Panel",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("code", models.CharField(max_length=6, unique=True)),
                (
                    "substrate",
                    models.CharField(
                        choices=[
                            ("glass", "glass"),
                            ("fibre board", "fibre board"),
                            ("primed panel", "primed panel"),
                            ("concrete", "concrete"),
                            ("steel", "steel"),
                            ("film", "film"),
                        ],
                        default="glass",
                        max_length=14,
                    ),
                ),
                ("area_dm2", trials.models.fields.Number(blank=True, null=True, verbose_name="area")),
                ("mass_g", trials.models.fields.Number(blank=True, null=True, verbose_name="mass applied")),
                ("applied_at", models.DateTimeField(blank=True, null=True)),
                ("air_c", trials.models.fields.Number(blank=True, null=True, verbose_name="air")),
                ("humidity_pct", trials.models.fields.Number(blank=True, null=True, verbose_name="humidity")),
                ("substrate_c", trials.models.fields.Number(blank=True, null=True, verbose_name="substrate")),
                ("material_c", trials.models.fields.Number(blank=True, null=True, verbose_name="material")),
                ("remark", models.TextField(blank=True, default="")),
                (
                    "stored_tin",
                    models.ForeignKey(
                        blank=True,
                        null=True,
                        on_delete=django.db.models.deletion.PROTECT,
                        related_name="panels",
                        to="trials.storedtin",
                    ),
                ),
                (
                    "trial",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.CASCADE, related_name="panels", to="trials.trial"
                    ),
                ),
            ],
            options={
                "constraints": [
                    models.CheckConstraint(
                        condition=models.Q(
                            ("substrate__in", ["glass", "fibre board", "primed panel", "concrete", "steel", "film"])
                        ),
                        name="panel_substrate_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("area_dm2__isnull", True), ("area_dm2__gt", 0), _connector="OR"),
                        name="panel_area_dm2_positive",
                        violation_error_message="Area dm2 must be above 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("mass_g__isnull", True), ("mass_g__gt", 0), _connector="OR"),
                        name="panel_mass_g_positive",
                        violation_error_message="Mass must be above 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("humidity_pct__isnull", True),
                            models.Q(("humidity_pct__gte", 0), ("humidity_pct__lte", 100)),
                            _connector="OR",
                        ),
                        name="panel_humidity_pct_per_cent",
                        violation_error_message="Humidity must be from 0 to 100.",
                    ),
                ],
            },
        ),
        migrations.CreateModel(
            name="Layer",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("position", models.PositiveSmallIntegerField()),
                (
                    "coat",
                    models.CharField(
                        choices=[
                            ("primer", "primer"),
                            ("scratch coat", "scratch coat"),
                            ("body coat", "body coat"),
                            ("top coat", "top coat"),
                            ("second coat", "second coat of the same"),
                        ],
                        default="body coat",
                        max_length=14,
                    ),
                ),
                ("wet_um", trials.models.fields.Number(blank=True, null=True, verbose_name="wet film")),
                (
                    "method",
                    models.CharField(
                        choices=[
                            ("poured", "poured"),
                            ("notched trowel", "notched trowel"),
                            ("roller", "roller"),
                            ("drawdown", "drawdown"),
                            ("spray", "spray"),
                        ],
                        default="poured",
                        max_length=14,
                    ),
                ),
                (
                    "spiked_after_min",
                    trials.models.fields.Number(blank=True, null=True, verbose_name="spiked roller after"),
                ),
                (
                    "recoated_after_h",
                    trials.models.fields.Number(blank=True, null=True, verbose_name="recoated after"),
                ),
                ("sanded", models.BooleanField(default=False)),
                (
                    "panel",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.CASCADE, related_name="layers", to="trials.panel"
                    ),
                ),
            ],
            options={
                "constraints": [
                    models.UniqueConstraint(fields=("panel", "position"), name="layer_position_once"),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("coat__in", ["primer", "scratch coat", "body coat", "top coat", "second coat"])
                        ),
                        name="layer_coat_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("method__in", ["poured", "notched trowel", "roller", "drawdown", "spray"])
                        ),
                        name="layer_method_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("wet_um__isnull", True), ("wet_um__gt", 0), _connector="OR"),
                        name="layer_wet_um_positive",
                        violation_error_message="Wet must be above 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("spiked_after_min__isnull", True), ("spiked_after_min__gte", 0), _connector="OR"
                        ),
                        name="layer_spiked_after_min_not_negative",
                        violation_error_message="Spiked after must not be below 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("recoated_after_h__isnull", True), ("recoated_after_h__gte", 0), _connector="OR"
                        ),
                        name="layer_recoated_after_h_not_negative",
                        violation_error_message="Recoated after h must not be below 0.",
                    ),
                ],
            },
        ),
        migrations.CreateModel(
            name="Lot",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("number", models.CharField(max_length=40)),
                ("received", models.DateField(blank=True, null=True)),
                ("expires", models.DateField(blank=True, null=True)),
                (
                    "density_g_ml",
                    trials.models.fields.Number(
                        blank=True, help_text="certificate", null=True, verbose_name="density"
                    ),
                ),
                (
                    "non_volatile_pct",
                    trials.models.fields.Number(
                        blank=True, help_text="certificate", null=True, verbose_name="non-volatile content"
                    ),
                ),
                (
                    "certificate_as",
                    models.CharField(
                        blank=True,
                        choices=[
                            ("equivalent weight", "equivalent weight, g/eq"),
                            ("NCO content", "NCO content, %"),
                            ("hydroxyl value", "hydroxyl value, mg KOH/g"),
                            ("amine value", "amine value, mg KOH/g"),
                        ],
                        default="",
                        max_length=20,
                        verbose_name="certificate gives",
                    ),
                ),
                (
                    "certificate_value",
                    trials.models.fields.Number(blank=True, null=True, verbose_name="certificate value"),
                ),
                (
                    "equivalent_g",
                    trials.models.fields.Number(
                        blank=True, help_text="from the certificate", null=True, verbose_name="equivalent weight"
                    ),
                ),
                (
                    "water_pct",
                    trials.models.fields.Number(
                        blank=True, help_text="Karl Fischer", null=True, verbose_name="water"
                    ),
                ),
                ("opened", models.DateField(blank=True, null=True, verbose_name="opened on")),
                ("appearance", models.TextField(blank=True, default="", help_text="what stood in the bottle")),
                ("shaken", models.BooleanField(blank=True, null=True, verbose_name="shaken before use")),
                ("warmed", models.BooleanField(blank=True, null=True, verbose_name="warmed before use")),
                ("on_hand_kg", trials.models.fields.Number(blank=True, null=True, verbose_name="on hand")),
                (
                    "material",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.PROTECT, related_name="lots", to="trials.rawmaterial"
                    ),
                ),
            ],
            options={
                "constraints": [
                    models.UniqueConstraint(fields=("material", "number"), name="lot_number_once"),
                    models.CheckConstraint(
                        condition=models.Q(("density_g_ml__isnull", True), ("density_g_ml__gt", 0), _connector="OR"),
                        name="lot_density_g_ml_positive",
                        violation_error_message="Density must be above 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("certificate_value__isnull", True), ("certificate_value__gt", 0), _connector="OR"
                        ),
                        name="lot_certificate_value_positive",
                        violation_error_message="Certificate value must be above 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("equivalent_g__isnull", True), ("equivalent_g__gt", 0), _connector="OR"),
                        name="lot_equivalent_g_positive",
                        violation_error_message="Equivalent must be above 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("non_volatile_pct__isnull", True),
                            models.Q(("non_volatile_pct__gte", 0), ("non_volatile_pct__lte", 100)),
                            _connector="OR",
                        ),
                        name="lot_non_volatile_pct_per_cent",
                        violation_error_message="Non volatile must be from 0 to 100.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("water_pct__isnull", True),
                            models.Q(("water_pct__gte", 0), ("water_pct__lte", 100)),
                            _connector="OR",
                        ),
                        name="lot_water_pct_per_cent",
                        violation_error_message="Water must be from 0 to 100.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("on_hand_kg__isnull", True), ("on_hand_kg__gte", 0), _connector="OR"),
                        name="lot_on_hand_kg_not_negative",
                        violation_error_message="On hand must not be below 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("expires__isnull", True),
                            ("received__isnull", True),
                            ("expires__gte", models.F("received")),
                            _connector="OR",
                        ),
                        name="lot_expires_after_received",
                    ),
                ],
            },
        ),
        migrations.CreateModel(
            name="Paper",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                (
                    "subject",
                    models.CharField(
                        choices=[
                            ("food contact", "food contact"),
                            ("emissions", "emissions"),
                            ("cyclic siloxanes", "cyclic siloxanes"),
                            ("mineral oil", "mineral oil"),
                            ("safety data sheet", "safety data sheet"),
                            ("other", "other"),
                        ],
                        max_length=20,
                    ),
                ),
                ("title", models.CharField(max_length=200)),
                ("region", models.CharField(blank=True, default="", max_length=60)),
                ("issued", models.DateField(blank=True, null=True)),
                ("expires", models.DateField(blank=True, null=True)),
                ("says", models.TextField(blank=True, default="", help_text="in a sentence")),
                (
                    "material",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.CASCADE, related_name="papers", to="trials.rawmaterial"
                    ),
                ),
            ],
            options={
                "constraints": [
                    models.CheckConstraint(
                        condition=models.Q(
                            (
                                "subject__in",
                                [
                                    "food contact",
                                    "emissions",
                                    "cyclic siloxanes",
                                    "mineral oil",
                                    "safety data sheet",
                                    "other",
                                ],
                            )
                        ),
                        name="paper_subject_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("expires__isnull", True),
                            ("issued__isnull", True),
                            ("expires__gte", models.F("issued")),
                            _connector="OR",
                        ),
                        name="paper_expires_after_issued",
                    ),
                ],
            },
        ),
        migrations.CreateModel(
            name="Balance",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("name", models.CharField(max_length=60, unique=True)),
                ("step_g", trials.models.fields.Number(verbose_name="reads to")),
                ("retired", models.BooleanField(default=False)),
            ],
            options={
                "constraints": [
                    models.CheckConstraint(
                        condition=models.Q(("step_g__isnull", True), ("step_g__gt", 0), _connector="OR"),
                        name="balance_step_g_positive",
                        violation_error_message="Step must be above 0.",
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="BaseEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                ("restricted", models.BooleanField(default=False, verbose_name="only for named people")),
                ("code", models.CharField(max_length=20)),
                ("name", models.CharField(max_length=120)),
                (
                    "chemistry",
                    models.CharField(
                        choices=[
                            ("epoxy-amine", "epoxy"),
                            ("polyurethane", "polyurethane"),
                            ("polyaspartic", "polyaspartic"),
                            ("other", "other"),
                        ],
                        max_length=16,
                        verbose_name="binder chemistry",
                    ),
                ),
                (
                    "field",
                    models.CharField(
                        choices=[
                            ("floor", "floor coating"),
                            ("casting resin", "casting resin"),
                            ("marine", "marine and protective"),
                            ("adhesive", "adhesive or sealant"),
                        ],
                        max_length=16,
                        verbose_name="application field",
                    ),
                ),
                (
                    "kind",
                    models.CharField(
                        choices=[("recipe", "recipe"), ("black box", "black box")],
                        max_length=10,
                        verbose_name="known as",
                    ),
                ),
                ("film_um", trials.models.fields.Number(blank=True, null=True, verbose_name="film thickness meant")),
                (
                    "additive",
                    models.CharField(
                        choices=[("no", "no"), ("may", "may contain one"), ("yes", "contains one already")],
                        default="no",
                        max_length=4,
                        verbose_name="defoamer in it",
                    ),
                ),
                (
                    "additive_note",
                    models.TextField(blank=True, default="", verbose_name="which, and why it stays in"),
                ),
                ("remarks", models.TextField(blank=True, default="")),
                (
                    "owner",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to=settings.AUTH_USER_MODEL,
                    ),
                ),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.base",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="baseevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="BaseShare",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                (
                    "base",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.CASCADE, related_name="shares", to="trials.base"
                    ),
                ),
                (
                    "person",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.CASCADE, related_name="+", to=settings.AUTH_USER_MODEL
                    ),
                ),
            ],
            options={
                "constraints": [models.UniqueConstraint(fields=("base", "person"), name="base_share_once")],
            },
        ),
        migrations.CreateModel(
            name="BaseShareEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                (
                    "base",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.base",
                    ),
                ),
                (
                    "person",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to=settings.AUTH_USER_MODEL,
                    ),
                ),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.baseshare",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="baseshareevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="CommonBatchLot",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                (
                    "batch",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.CASCADE, related_name="lots", to="trials.commonbatch"
                    ),
                ),
                (
                    "lot",
                    models.ForeignKey(on_delete=django.db.models.deletion.PROTECT, related_name="+", to="trials.lot"),
                ),
            ],
            options={
                "constraints": [models.UniqueConstraint(fields=("batch", "lot"), name="common_batch_lot_once")],
            },
        ),
        migrations.CreateModel(
            name="Criterion",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("key", models.SlugField(max_length=30)),
                ("version", models.PositiveSmallIntegerField(default=1)),
                ("current", models.BooleanField(default=True)),
                ("name", models.CharField(max_length=60)),
                ("position", models.PositiveSmallIntegerField(help_text="order in lists")),
                ("scale", models.CharField(choices=[("steps", "steps"), ("quantity", "quantity")], max_length=10)),
                ("unit", models.CharField(blank=True, default="", max_length=20)),
                ("low", trials.models.fields.Number(verbose_name="lowest value of the scale")),
                (
                    "high",
                    trials.models.fields.Number(blank=True, null=True, verbose_name="highest value of the scale"),
                ),
                (
                    "better",
                    models.CharField(
                        choices=[("lower", "lower is better"), ("higher", "higher is better")], max_length=8
                    ),
                ),
                (
                    "concern",
                    models.CharField(
                        choices=[("efficiency", "efficiency"), ("compatibility", "compatibility")], max_length=16
                    ),
                ),
                ("standard", models.CharField(blank=True, default="", max_length=120)),
                ("how", models.TextField(blank=True, default="", help_text="how it is read, in a sentence or two")),
            ],
            options={
                "constraints": [
                    models.UniqueConstraint(fields=("key", "version"), name="criterion_version_once"),
                    models.UniqueConstraint(
                        condition=models.Q(("current", True)), fields=("key",), name="criterion_one_current"
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("scale__in", ["steps", "quantity"])), name="criterion_scale_known"
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("better__in", ["lower", "higher"])), name="criterion_better_known"
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("concern__in", ["efficiency", "compatibility"])),
                        name="criterion_concern_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("scale", "quantity"), ("high__isnull", False), _connector="OR"),
                        name="criterion_steps_have_an_end",
                    ),
                ],
            },
        ),
        migrations.CreateModel(
            name="CriterionEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                ("key", models.SlugField(db_index=False, max_length=30)),
                ("version", models.PositiveSmallIntegerField(default=1)),
                ("current", models.BooleanField(default=True)),
                ("name", models.CharField(max_length=60)),
                ("position", models.PositiveSmallIntegerField(help_text="order in lists")),
                ("scale", models.CharField(choices=[("steps", "steps"), ("quantity", "quantity")], max_length=10)),
                ("unit", models.CharField(blank=True, default="", max_length=20)),
                ("low", trials.models.fields.Number(verbose_name="lowest value of the scale")),
                (
                    "high",
                    trials.models.fields.Number(blank=True, null=True, verbose_name="highest value of the scale"),
                ),
                (
                    "better",
                    models.CharField(
                        choices=[("lower", "lower is better"), ("higher", "higher is better")], max_length=8
                    ),
                ),
                (
                    "concern",
                    models.CharField(
                        choices=[("efficiency", "efficiency"), ("compatibility", "compatibility")], max_length=16
                    ),
                ),
                ("standard", models.CharField(blank=True, default="", max_length=120)),
                ("how", models.TextField(blank=True, default="", help_text="how it is read, in a sentence or two")),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.criterion",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="criterionevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="Dosage",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("dosage_pct", trials.models.fields.Number(verbose_name="dosage")),
                (
                    "basis",
                    models.CharField(
                        choices=[("total", "total"), ("component", "component"), ("binder solids", "binder solids")],
                        max_length=14,
                    ),
                ),
                (
                    "basis_component",
                    models.CharField(
                        blank=True, choices=[("A", "A"), ("B", "B"), ("C", "C")], default="", max_length=1
                    ),
                ),
                ("counting", models.CharField(choices=[("on top", "on top"), ("within", "within")], max_length=8)),
                (
                    "supplied",
                    models.CharField(
                        choices=[("as supplied", "as supplied"), ("active", "active")],
                        default="as supplied",
                        max_length=12,
                        verbose_name="dosage of",
                    ),
                ),
                (
                    "stage",
                    models.CharField(
                        choices=[("grind", "grind"), ("let-down", "let-down"), ("post-addition", "post-addition")],
                        max_length=16,
                    ),
                ),
                (
                    "into",
                    models.CharField(
                        choices=[("A", "A"), ("B", "B"), ("C", "C")],
                        default="A",
                        max_length=1,
                        verbose_name="goes into",
                    ),
                ),
                (
                    "counts_in_ratio",
                    models.BooleanField(default=False, verbose_name="counts as part of its component"),
                ),
                ("planned_g", trials.models.fields.Number(verbose_name="planned")),
                ("weighed_g", trials.models.fields.Number(blank=True, null=True, verbose_name="weighed")),
                (
                    "candidate",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.PROTECT, related_name="dosages", to="trials.candidate"
                    ),
                ),
                (
                    "lot",
                    models.ForeignKey(
                        blank=True,
                        null=True,
                        on_delete=django.db.models.deletion.PROTECT,
                        related_name="+",
                        to="trials.lot",
                    ),
                ),
                (
                    "trial",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.CASCADE, related_name="dosages", to="trials.trial"
                    ),
                ),
            ],
            options={
                "constraints": [
                    models.UniqueConstraint(fields=("trial", "candidate", "stage"), name="dosage_once_a_stage"),
                    models.CheckConstraint(
                        condition=models.Q(("basis__in", ["total", "component", "binder solids"])),
                        name="dosage_basis_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("counting__in", ["on top", "within"])), name="dosage_counting_known"
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("supplied__in", ["as supplied", "active"])), name="dosage_supplied_known"
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("stage__in", ["grind", "let-down", "post-addition"])),
                        name="dosage_stage_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("dosage_pct__isnull", True), ("dosage_pct__gte", 0), _connector="OR"),
                        name="dosage_dosage_pct_not_negative",
                        violation_error_message="Dosage must not be below 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("planned_g__isnull", True), ("planned_g__gte", 0), _connector="OR"),
                        name="dosage_planned_g_not_negative",
                        violation_error_message="Planned must not be below 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("weighed_g__isnull", True), ("weighed_g__gte", 0), _connector="OR"),
                        name="dosage_weighed_g_not_negative",
                        violation_error_message="Weighed must not be below 0.",
                    ),
                ],
            },
        ),
        migrations.CreateModel(
            name="EnquiryEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                ("restricted", models.BooleanField(default=False, verbose_name="only for named people")),
                ("number", models.PositiveIntegerField()),
                ("subject", models.CharField(max_length=160)),
                ("customer", models.CharField(blank=True, default="", max_length=120)),
                ("withheld", models.BooleanField(default=False, verbose_name="withhold the customer's name outside")),
                (
                    "field",
                    models.CharField(
                        choices=[
                            ("floor", "floor coating"),
                            ("casting resin", "casting resin"),
                            ("marine", "marine and protective"),
                            ("adhesive", "adhesive or sealant"),
                        ],
                        max_length=16,
                        verbose_name="application field",
                    ),
                ),
                ("asked", models.TextField(blank=True, default="", verbose_name="what is asked")),
                ("film_um", trials.models.fields.Number(blank=True, null=True, verbose_name="film thickness")),
                (
                    "incumbent_pct",
                    trials.models.fields.Number(
                        blank=True,
                        help_text="on total, on top, as supplied",
                        null=True,
                        verbose_name="dosage used today",
                    ),
                ),
                (
                    "incumbent_note",
                    models.CharField(blank=True, default="", max_length=160, verbose_name="used today, in words"),
                ),
                ("received", models.DateField()),
                ("due", models.DateField(blank=True, null=True)),
                ("closed", models.DateField(blank=True, null=True, verbose_name="answered on")),
                (
                    "base",
                    models.ForeignKey(
                        blank=True,
                        db_constraint=False,
                        null=True,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.base",
                    ),
                ),
                (
                    "incumbent",
                    models.ForeignKey(
                        blank=True,
                        db_constraint=False,
                        null=True,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.candidate",
                        verbose_name="used today",
                    ),
                ),
                (
                    "owner",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to=settings.AUTH_USER_MODEL,
                    ),
                ),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.enquiry",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="enquiryevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="EnquiryShare",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                (
                    "enquiry",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.CASCADE, related_name="shares", to="trials.enquiry"
                    ),
                ),
                (
                    "person",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.CASCADE, related_name="+", to=settings.AUTH_USER_MODEL
                    ),
                ),
            ],
            options={
                "constraints": [models.UniqueConstraint(fields=("enquiry", "person"), name="enquiry_share_once")],
            },
        ),
        migrations.CreateModel(
            name="EnquiryShareEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                (
                    "enquiry",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.enquiry",
                    ),
                ),
                (
                    "person",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to=settings.AUTH_USER_MODEL,
                    ),
                ),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.enquiryshare",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="enquiryshareevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="Equipment",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("name", models.CharField(max_length=60, unique=True)),
                ("blade_mm", trials.models.fields.Number(blank=True, null=True, verbose_name="blade or disc")),
                ("last_cleaned", models.DateTimeField(blank=True, null=True)),
                (
                    "last_silicone",
                    models.DateTimeField(blank=True, null=True, verbose_name="last used with silicone"),
                ),
                ("retired", models.BooleanField(default=False)),
            ],
            options={
                "constraints": [
                    models.CheckConstraint(
                        condition=models.Q(("blade_mm__isnull", True), ("blade_mm__gt", 0), _connector="OR"),
                        name="equipment_blade_mm_positive",
                        violation_error_message="Blade mm must be above 0.",
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="EquipmentEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                ("name", models.CharField(max_length=60)),
                ("blade_mm", trials.models.fields.Number(blank=True, null=True, verbose_name="blade or disc")),
                ("last_cleaned", models.DateTimeField(blank=True, null=True)),
                (
                    "last_silicone",
                    models.DateTimeField(blank=True, null=True, verbose_name="last used with silicone"),
                ),
                ("retired", models.BooleanField(default=False)),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.equipment",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="equipmentevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="Finding",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("at", models.DateTimeField()),
                ("answers", models.JSONField(default=dict)),
                (
                    "cause",
                    models.CharField(
                        blank=True,
                        choices=[
                            ("entrained air", "entrained air"),
                            ("carbon dioxide", "carbon dioxide"),
                            ("outgassing", "outgassing of the substrate"),
                            ("solvent", "solvent"),
                            ("mixing", "mixing"),
                            ("contamination", "contamination"),
                            ("crystals", "crystals of the resin"),
                            ("additive haze", "haze of the additive"),
                            ("over-dosed", "over-dosed"),
                            ("under-sheared", "under-sheared"),
                            ("incompatible", "incompatible with this binder"),
                        ],
                        default="",
                        max_length=20,
                    ),
                ),
                ("remark", models.TextField(blank=True, default="")),
                (
                    "person",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.PROTECT, related_name="+", to=settings.AUTH_USER_MODEL
                    ),
                ),
                (
                    "trial",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.CASCADE, related_name="findings", to="trials.trial"
                    ),
                ),
            ],
            options={
                "constraints": [
                    models.CheckConstraint(
                        condition=models.Q(
                            (
                                "cause__in",
                                [
                                    "",
                                    "entrained air",
                                    "carbon dioxide",
                                    "outgassing",
                                    "solvent",
                                    "mixing",
                                    "contamination",
                                    "crystals",
                                    "additive haze",
                                    "over-dosed",
                                    "under-sheared",
                                    "incompatible",
                                ],
                            )
                        ),
                        name="finding_cause_known",
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="Limit",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("limit", trials.models.fields.Number()),
                (
                    "force",
                    models.CharField(choices=[("must", "must"), ("should", "should")], default="must", max_length=6),
                ),
                (
                    "criterion",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.PROTECT, related_name="+", to="trials.criterion"
                    ),
                ),
                (
                    "enquiry",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.CASCADE, related_name="limits", to="trials.enquiry"
                    ),
                ),
            ],
            options={
                "constraints": [
                    models.UniqueConstraint(fields=("enquiry", "criterion"), name="limit_once"),
                    models.CheckConstraint(
                        condition=models.Q(("force__in", ["must", "should"])), name="limit_force_known"
                    ),
                ],
            },
        ),
        migrations.CreateModel(
            name="LimitEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                ("limit", trials.models.fields.Number()),
                (
                    "force",
                    models.CharField(choices=[("must", "must"), ("should", "should")], default="must", max_length=6),
                ),
                (
                    "criterion",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.criterion",
                    ),
                ),
                (
                    "enquiry",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.enquiry",
                    ),
                ),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.limit",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="limitevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="Line",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("position", models.PositiveSmallIntegerField()),
                ("parts", trials.models.fields.Number(verbose_name="parts by mass")),
                (
                    "stage",
                    models.CharField(
                        blank=True,
                        choices=[("grind", "grind"), ("let-down", "let-down"), ("post-addition", "post-addition")],
                        default="",
                        max_length=16,
                    ),
                ),
                ("held", models.JSONField(blank=True, null=True)),
                (
                    "component",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.CASCADE, related_name="lines", to="trials.component"
                    ),
                ),
                (
                    "lot",
                    models.ForeignKey(
                        blank=True,
                        null=True,
                        on_delete=django.db.models.deletion.PROTECT,
                        related_name="+",
                        to="trials.lot",
                    ),
                ),
                (
                    "material",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.PROTECT, related_name="+", to="trials.rawmaterial"
                    ),
                ),
            ],
            options={
                "constraints": [
                    models.UniqueConstraint(
                        deferrable=django.db.models.constraints.Deferrable["DEFERRED"],
                        fields=("component", "position"),
                        name="line_position_once",
                    ),
                    models.CheckConstraint(condition=models.Q(("parts__gt", 0)), name="line_parts_positive"),
                    models.CheckConstraint(
                        condition=models.Q(("stage__in", ["", "grind", "let-down", "post-addition"])),
                        name="line_stage_known",
                    ),
                ],
            },
        ),
        migrations.CreateModel(
            name="CommonBatchLotEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                (
                    "batch",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.commonbatch",
                    ),
                ),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.commonbatchlot",
                    ),
                ),
                (
                    "lot",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.lot",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="commonbatchlotevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="LayerEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                ("position", models.PositiveSmallIntegerField()),
                (
                    "coat",
                    models.CharField(
                        choices=[
                            ("primer", "primer"),
                            ("scratch coat", "scratch coat"),
                            ("body coat", "body coat"),
                            ("top coat", "top coat"),
                            ("second coat", "second coat of the same"),
                        ],
                        default="body coat",
                        max_length=14,
                    ),
                ),
                ("wet_um", trials.models.fields.Number(blank=True, null=True, verbose_name="wet film")),
                (
                    "method",
                    models.CharField(
                        choices=[
                            ("poured", "poured"),
                            ("notched trowel", "notched trowel"),
                            ("roller", "roller"),
                            ("drawdown", "drawdown"),
                            ("spray", "spray"),
                        ],
                        default="poured",
                        max_length=14,
                    ),
                ),
                (
                    "spiked_after_min",
                    trials.models.fields.Number(blank=True, null=True, verbose_name="spiked roller after"),
                ),
                (
                    "recoated_after_h",
                    trials.models.fields.Number(blank=True, null=True, verbose_name="recoated after"),
                ),
                ("sanded", models.BooleanField(default=False)),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.layer",
                    ),
                ),
                (
                    "panel",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.panel",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="layerevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="PersonEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                ("sign_in_name", models.CharField(max_length=40, verbose_name="sign-in name")),
                ("full_name", models.CharField(max_length=120, verbose_name="name")),
                ("initials", models.CharField(max_length=6)),
                (
                    "role",
                    models.CharField(
                        choices=[
                            ("bench", "bench"),
                            ("supervisor", "supervisor"),
                            ("reader", "reader"),
                            ("administrator", "administrator"),
                        ],
                        default="bench",
                        max_length=16,
                    ),
                ),
                ("is_active", models.BooleanField(default=True, verbose_name="may sign in")),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to=settings.AUTH_USER_MODEL,
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="personevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="Photo",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("taken_at", models.DateTimeField()),
                ("age_h", trials.models.fields.Number(blank=True, null=True, verbose_name="age")),
                ("original", models.CharField(max_length=200)),
                ("original_sha256", models.CharField(max_length=64)),
                ("original_name", models.CharField(blank=True, default="", max_length=200)),
                ("picture", models.CharField(max_length=200)),
                ("picture_sha256", models.CharField(max_length=64)),
                ("width_px", models.PositiveIntegerField()),
                ("height_px", models.PositiveIntegerField()),
                ("mm_per_px", trials.models.fields.Number(blank=True, null=True, verbose_name="scale")),
                ("remark", models.TextField(blank=True, default="")),
                (
                    "panel",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.CASCADE, related_name="photos", to="trials.panel"
                    ),
                ),
                (
                    "person",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.PROTECT, related_name="+", to=settings.AUTH_USER_MODEL
                    ),
                ),
            ],
            options={
                "constraints": [
                    models.CheckConstraint(
                        condition=models.Q(("mm_per_px__isnull", True), ("mm_per_px__gt", 0), _connector="OR"),
                        name="photo_mm_per_px_positive",
                        violation_error_message="Mm per px must be above 0.",
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="PhotoEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                ("taken_at", models.DateTimeField()),
                ("age_h", trials.models.fields.Number(blank=True, null=True, verbose_name="age")),
                ("original", models.CharField(max_length=200)),
                ("original_sha256", models.CharField(max_length=64)),
                ("original_name", models.CharField(blank=True, default="", max_length=200)),
                ("picture", models.CharField(max_length=200)),
                ("picture_sha256", models.CharField(max_length=64)),
                ("width_px", models.PositiveIntegerField()),
                ("height_px", models.PositiveIntegerField()),
                ("mm_per_px", trials.models.fields.Number(blank=True, null=True, verbose_name="scale")),
                ("remark", models.TextField(blank=True, default="")),
                (
                    "panel",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.panel",
                    ),
                ),
                (
                    "person",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to=settings.AUTH_USER_MODEL,
                    ),
                ),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.photo",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="photoevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="Rating",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("instrument", models.CharField(blank=True, default="", max_length=60)),
                ("age_h", trials.models.fields.Number(verbose_name="age")),
                ("value", trials.models.fields.Number(blank=True, null=True)),
                ("word", models.CharField(blank=True, default="", max_length=60, verbose_name="instead of a figure")),
                ("blind", models.BooleanField(default=False, verbose_name="read blind")),
                ("at", models.DateTimeField()),
                (
                    "criterion",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.PROTECT, related_name="ratings", to="trials.criterion"
                    ),
                ),
                (
                    "panel",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.CASCADE, related_name="ratings", to="trials.panel"
                    ),
                ),
                (
                    "person",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.PROTECT, related_name="+", to=settings.AUTH_USER_MODEL
                    ),
                ),
            ],
            options={
                "constraints": [
                    models.UniqueConstraint(
                        fields=("panel", "criterion", "person", "instrument", "age_h"), name="rating_once"
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("value__isnull", False), models.Q(("word", ""), _negated=True), _connector="OR"
                        ),
                        name="rating_says_something",
                    ),
                    models.CheckConstraint(condition=models.Q(("age_h__gte", 0)), name="rating_age_not_negative"),
                ],
            },
        ),
        migrations.CreateModel(
            name="RatingEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                ("instrument", models.CharField(blank=True, default="", max_length=60)),
                ("age_h", trials.models.fields.Number(verbose_name="age")),
                ("value", trials.models.fields.Number(blank=True, null=True)),
                ("word", models.CharField(blank=True, default="", max_length=60, verbose_name="instead of a figure")),
                ("blind", models.BooleanField(default=False, verbose_name="read blind")),
                ("at", models.DateTimeField()),
                (
                    "criterion",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.criterion",
                    ),
                ),
                (
                    "panel",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.panel",
                    ),
                ),
                (
                    "person",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to=settings.AUTH_USER_MODEL,
                    ),
                ),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.rating",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="ratingevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="PaperEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                (
                    "subject",
                    models.CharField(
                        choices=[
                            ("food contact", "food contact"),
                            ("emissions", "emissions"),
                            ("cyclic siloxanes", "cyclic siloxanes"),
                            ("mineral oil", "mineral oil"),
                            ("safety data sheet", "safety data sheet"),
                            ("other", "other"),
                        ],
                        max_length=20,
                    ),
                ),
                ("title", models.CharField(max_length=200)),
                ("region", models.CharField(blank=True, default="", max_length=60)),
                ("issued", models.DateField(blank=True, null=True)),
                ("expires", models.DateField(blank=True, null=True)),
                ("says", models.TextField(blank=True, default="", help_text="in a sentence")),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.paper",
                    ),
                ),
                (
                    "material",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.rawmaterial",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="paperevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="LotEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                ("number", models.CharField(max_length=40)),
                ("received", models.DateField(blank=True, null=True)),
                ("expires", models.DateField(blank=True, null=True)),
                (
                    "density_g_ml",
                    trials.models.fields.Number(
                        blank=True, help_text="certificate", null=True, verbose_name="density"
                    ),
                ),
                (
                    "non_volatile_pct",
                    trials.models.fields.Number(
                        blank=True, help_text="certificate", null=True, verbose_name="non-volatile content"
                    ),
                ),
                (
                    "certificate_as",
                    models.CharField(
                        blank=True,
                        choices=[
                            ("equivalent weight", "equivalent weight, g/eq"),
                            ("NCO content", "NCO content, %"),
                            ("hydroxyl value", "hydroxyl value, mg KOH/g"),
                            ("amine value", "amine value, mg KOH/g"),
                        ],
                        default="",
                        max_length=20,
                        verbose_name="certificate gives",
                    ),
                ),
                (
                    "certificate_value",
                    trials.models.fields.Number(blank=True, null=True, verbose_name="certificate value"),
                ),
                (
                    "equivalent_g",
                    trials.models.fields.Number(
                        blank=True, help_text="from the certificate", null=True, verbose_name="equivalent weight"
                    ),
                ),
                (
                    "water_pct",
                    trials.models.fields.Number(
                        blank=True, help_text="Karl Fischer", null=True, verbose_name="water"
                    ),
                ),
                ("opened", models.DateField(blank=True, null=True, verbose_name="opened on")),
                ("appearance", models.TextField(blank=True, default="", help_text="what stood in the bottle")),
                ("shaken", models.BooleanField(blank=True, null=True, verbose_name="shaken before use")),
                ("warmed", models.BooleanField(blank=True, null=True, verbose_name="warmed before use")),
                ("on_hand_kg", trials.models.fields.Number(blank=True, null=True, verbose_name="on hand")),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.lot",
                    ),
                ),
                (
                    "material",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.rawmaterial",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="lotevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="LineEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                ("position", models.PositiveSmallIntegerField()),
                ("parts", trials.models.fields.Number(verbose_name="parts by mass")),
                (
                    "stage",
                    models.CharField(
                        blank=True,
                        choices=[("grind", "grind"), ("let-down", "let-down"), ("post-addition", "post-addition")],
                        default="",
                        max_length=16,
                    ),
                ),
                ("held", models.JSONField(blank=True, null=True)),
                (
                    "component",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.component",
                    ),
                ),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.line",
                    ),
                ),
                (
                    "lot",
                    models.ForeignKey(
                        blank=True,
                        db_constraint=False,
                        null=True,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.lot",
                    ),
                ),
                (
                    "material",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.rawmaterial",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="lineevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="CandidateEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                (
                    "chemistry",
                    models.CharField(
                        choices=[
                            ("concentrated polysiloxane", "concentrated polysiloxane"),
                            ("polysiloxane solution", "polysiloxane solution"),
                            ("modified polysiloxane", "modified polysiloxane"),
                            ("silicone-free polymer", "silicone-free polymer"),
                            ("mineral oil", "mineral oil"),
                            ("fluorinated", "fluorinated"),
                            ("wax or particle dispersion", "wax or particle dispersion"),
                        ],
                        max_length=28,
                    ),
                ),
                (
                    "carrier",
                    models.CharField(
                        choices=[
                            ("none", "none"),
                            ("solvent", "solvent"),
                            ("plasticiser", "plasticiser"),
                            ("reactive", "reactive"),
                        ],
                        max_length=12,
                    ),
                ),
                (
                    "carrier_pct",
                    trials.models.fields.Number(
                        blank=True,
                        help_text="of the additive as supplied",
                        null=True,
                        verbose_name="share of carrier",
                    ),
                ),
                ("silicone", models.BooleanField(verbose_name="contains silicone")),
                ("strength", models.PositiveSmallIntegerField(help_text="1 mild to 5 strong")),
                (
                    "macro_foam",
                    models.PositiveSmallIntegerField(help_text="1 to 5", verbose_name="against macro-foam"),
                ),
                ("air_release", models.PositiveSmallIntegerField(help_text="1 to 5", verbose_name="for air release")),
                (
                    "tip_speed_m_s",
                    trials.models.fields.Number(
                        blank=True, help_text="at least", null=True, verbose_name="tip speed asked for"
                    ),
                ),
                (
                    "minutes",
                    trials.models.fields.Number(
                        blank=True, help_text="at least", null=True, verbose_name="time asked for"
                    ),
                ),
                (
                    "from_pct",
                    trials.models.fields.Number(
                        blank=True, help_text="on total, on top, as supplied", null=True, verbose_name="window from"
                    ),
                ),
                (
                    "to_pct",
                    trials.models.fields.Number(
                        blank=True, help_text="on total, on top, as supplied", null=True, verbose_name="window to"
                    ),
                ),
                (
                    "highest_tried_pct",
                    trials.models.fields.Number(
                        blank=True, help_text="on total, on top, as supplied", null=True, verbose_name="highest tried"
                    ),
                ),
                (
                    "stages",
                    django.contrib.postgres.fields.ArrayField(
                        base_field=models.CharField(
                            choices=[
                                ("grind", "grind"),
                                ("let-down", "let-down"),
                                ("post-addition", "post-addition"),
                            ],
                            max_length=16,
                        ),
                        blank=True,
                        default=list,
                        size=None,
                    ),
                ),
                (
                    "diluted_in",
                    models.TextField(
                        blank=True, default="", help_text="what it may be diluted in; empty: never dilute"
                    ),
                ),
                ("cautions", models.TextField(blank=True, default="")),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.candidate",
                    ),
                ),
                (
                    "material",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.rawmaterial",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="candidateevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="RawMaterialEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                ("code", models.CharField(max_length=20)),
                ("name", models.CharField(max_length=120)),
                ("supplier", models.CharField(blank=True, default="", max_length=120)),
                (
                    "function",
                    models.CharField(
                        choices=[
                            ("binder", "binder"),
                            ("reactive diluent", "reactive diluent"),
                            ("hardener", "hardener"),
                            ("pigment", "pigment"),
                            ("filler", "filler"),
                            ("solvent", "solvent"),
                            ("plasticiser", "plasticiser"),
                            ("catalyst", "catalyst"),
                            ("water", "water"),
                            ("water scavenger", "water scavenger"),
                            ("additive", "additive"),
                            ("air-release candidate", "air-release candidate"),
                        ],
                        max_length=24,
                    ),
                ),
                (
                    "density_g_ml",
                    trials.models.fields.Number(blank=True, help_text="at 23 °C", null=True, verbose_name="density"),
                ),
                (
                    "non_volatile_pct",
                    trials.models.fields.Number(
                        blank=True, help_text="by mass", null=True, verbose_name="non-volatile content"
                    ),
                ),
                (
                    "voc_pct",
                    trials.models.fields.Number(
                        blank=True, help_text="by mass; boiling point up to 250 °C", null=True, verbose_name="VOC"
                    ),
                ),
                (
                    "active_pct",
                    trials.models.fields.Number(
                        blank=True, help_text="of the material as supplied", null=True, verbose_name="active content"
                    ),
                ),
                (
                    "diisocyanate_pct",
                    trials.models.fields.Number(
                        blank=True, help_text="by mass", null=True, verbose_name="monomeric diisocyanate"
                    ),
                ),
                (
                    "price_per_kg",
                    trials.models.fields.Number(blank=True, help_text="per kg", null=True, verbose_name="price"),
                ),
                (
                    "hazards",
                    django.contrib.postgres.fields.ArrayField(
                        base_field=models.CharField(max_length=8),
                        blank=True,
                        default=list,
                        size=None,
                        verbose_name="hazard statements",
                    ),
                ),
                ("sheet_issued", models.DateField(blank=True, null=True, verbose_name="safety data sheet of")),
                ("remarks", models.TextField(blank=True, default="")),
                ("withdrawn", models.BooleanField(default=False, verbose_name="no longer used")),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.rawmaterial",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="rawmaterialevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="ReactiveGroup",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                (
                    "group",
                    models.CharField(
                        choices=[
                            ("epoxide", "epoxide"),
                            ("amine hydrogen", "amine hydrogen"),
                            ("isocyanate", "isocyanate"),
                            ("hydroxyl", "hydroxyl"),
                            ("aspartate amine", "aspartate amine"),
                            ("thiol", "thiol"),
                            ("anhydride", "anhydride"),
                            ("acrylate", "acrylate"),
                            ("water", "water"),
                        ],
                        max_length=16,
                    ),
                ),
                (
                    "entered_as",
                    models.CharField(
                        choices=[
                            ("equivalent weight", "equivalent weight, g/eq"),
                            ("NCO content", "NCO content, %"),
                            ("hydroxyl value", "hydroxyl value, mg KOH/g"),
                            ("amine value", "amine value, mg KOH/g"),
                        ],
                        default="equivalent weight",
                        max_length=20,
                    ),
                ),
                ("entered", trials.models.fields.Number(verbose_name="value")),
                (
                    "hydrogens_per_nitrogen",
                    trials.models.fields.Number(
                        blank=True, help_text="2 for a primary amine, 1 for an aspartate", null=True
                    ),
                ),
                ("equivalent_g", trials.models.fields.Number(verbose_name="equivalent weight")),
                (
                    "material",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.CASCADE, related_name="groups", to="trials.rawmaterial"
                    ),
                ),
            ],
            options={
                "constraints": [
                    models.UniqueConstraint(fields=("material", "group"), name="reactive_group_once"),
                    models.CheckConstraint(
                        condition=models.Q(
                            (
                                "group__in",
                                [
                                    "epoxide",
                                    "amine hydrogen",
                                    "isocyanate",
                                    "hydroxyl",
                                    "aspartate amine",
                                    "thiol",
                                    "anhydride",
                                    "acrylate",
                                    "water",
                                ],
                            )
                        ),
                        name="reactive_group_group_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("entered_as__in", ["equivalent weight", "NCO content", "hydroxyl value", "amine value"])
                        ),
                        name="reactive_group_entered_as_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("entered__isnull", True), ("entered__gt", 0), _connector="OR"),
                        name="reactive_group_entered_positive",
                        violation_error_message="Entered must be above 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("equivalent_g__isnull", True), ("equivalent_g__gt", 0), _connector="OR"),
                        name="reactive_group_equivalent_g_positive",
                        violation_error_message="Equivalent must be above 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("hydrogens_per_nitrogen__isnull", True),
                            ("hydrogens_per_nitrogen__gt", 0),
                            _connector="OR",
                        ),
                        name="reactive_group_hydrogens_per_nitrogen_positive",
                        violation_error_message="Hydrogens per nitrogen must be above 0.",
                    ),
                ],
            },
        ),
        migrations.CreateModel(
            name="ReactiveGroupEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                (
                    "group",
                    models.CharField(
                        choices=[
                            ("epoxide", "epoxide"),
                            ("amine hydrogen", "amine hydrogen"),
                            ("isocyanate", "isocyanate"),
                            ("hydroxyl", "hydroxyl"),
                            ("aspartate amine", "aspartate amine"),
                            ("thiol", "thiol"),
                            ("anhydride", "anhydride"),
                            ("acrylate", "acrylate"),
                            ("water", "water"),
                        ],
                        max_length=16,
                    ),
                ),
                (
                    "entered_as",
                    models.CharField(
                        choices=[
                            ("equivalent weight", "equivalent weight, g/eq"),
                            ("NCO content", "NCO content, %"),
                            ("hydroxyl value", "hydroxyl value, mg KOH/g"),
                            ("amine value", "amine value, mg KOH/g"),
                        ],
                        default="equivalent weight",
                        max_length=20,
                    ),
                ),
                ("entered", trials.models.fields.Number(verbose_name="value")),
                (
                    "hydrogens_per_nitrogen",
                    trials.models.fields.Number(
                        blank=True, help_text="2 for a primary amine, 1 for an aspartate", null=True
                    ),
                ),
                ("equivalent_g", trials.models.fields.Number(verbose_name="equivalent weight")),
                (
                    "material",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.rawmaterial",
                    ),
                ),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.reactivegroup",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="reactivegroupevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="Retain",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("what", models.CharField(blank=True, default="", max_length=120)),
                ("place", models.CharField(max_length=120, verbose_name="where")),
                ("until", models.DateField(blank=True, null=True, verbose_name="keep until")),
                ("lent_to", models.CharField(blank=True, default="", max_length=120)),
                ("lent_on", models.DateField(blank=True, null=True)),
                ("returned_on", models.DateField(blank=True, null=True)),
                (
                    "panel",
                    models.ForeignKey(
                        blank=True,
                        null=True,
                        on_delete=django.db.models.deletion.CASCADE,
                        related_name="retains",
                        to="trials.panel",
                    ),
                ),
                (
                    "trial",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.CASCADE, related_name="retains", to="trials.trial"
                    ),
                ),
            ],
        ),
        migrations.CreateModel(
            name="ComponentEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                ("letter", models.CharField(choices=[("A", "A"), ("B", "B"), ("C", "C")], max_length=1)),
                ("name", models.CharField(blank=True, default="", max_length=120)),
                ("parts", trials.models.fields.Number(verbose_name="mixing parts by mass")),
                (
                    "density_g_ml",
                    trials.models.fields.Number(
                        blank=True, help_text="measured or as stated", null=True, verbose_name="density"
                    ),
                ),
                (
                    "viscosity_mpa_s",
                    trials.models.fields.Number(
                        blank=True, help_text="at 23 °C", null=True, verbose_name="viscosity"
                    ),
                ),
                (
                    "non_volatile_pct",
                    trials.models.fields.Number(
                        blank=True, help_text="as stated", null=True, verbose_name="non-volatile content"
                    ),
                ),
                (
                    "water_pct",
                    trials.models.fields.Number(
                        blank=True, help_text="Karl Fischer", null=True, verbose_name="water"
                    ),
                ),
                ("batch", models.CharField(blank=True, default="", max_length=60, verbose_name="customer's batch")),
                ("received", models.DateField(blank=True, null=True)),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.component",
                    ),
                ),
                (
                    "revision",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.revision",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="componentevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="CommonBatchEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                (
                    "letter",
                    models.CharField(
                        choices=[("A", "A"), ("B", "B"), ("C", "C")],
                        default="A",
                        max_length=1,
                        verbose_name="component",
                    ),
                ),
                ("number", models.CharField(max_length=30)),
                ("made_at", models.DateTimeField()),
                ("mass_g", trials.models.fields.Number(blank=True, null=True, verbose_name="mass")),
                (
                    "water_pct",
                    trials.models.fields.Number(
                        blank=True, help_text="Karl Fischer", null=True, verbose_name="water"
                    ),
                ),
                (
                    "viscosity_mpa_s",
                    trials.models.fields.Number(
                        blank=True, help_text="at 23 °C", null=True, verbose_name="viscosity"
                    ),
                ),
                (
                    "density_g_ml",
                    trials.models.fields.Number(
                        blank=True, help_text="free of air", null=True, verbose_name="density"
                    ),
                ),
                ("remarks", models.TextField(blank=True, default="")),
                (
                    "made_by",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to=settings.AUTH_USER_MODEL,
                    ),
                ),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.commonbatch",
                    ),
                ),
                (
                    "revision",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.revision",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="commonbatchevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="RevisionEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                ("number", models.PositiveSmallIntegerField()),
                ("why", models.TextField(blank=True, default="")),
                (
                    "air_free_density_g_ml",
                    trials.models.fields.Number(
                        blank=True, help_text="measured", null=True, verbose_name="air-free density of the mix"
                    ),
                ),
                (
                    "air_free_method",
                    models.CharField(blank=True, default="", max_length=120, verbose_name="how measured"),
                ),
                (
                    "viscosity_mpa_s",
                    trials.models.fields.Number(
                        blank=True, help_text="at 23 °C", null=True, verbose_name="viscosity of the mix"
                    ),
                ),
                ("yield_pa", trials.models.fields.Number(blank=True, null=True, verbose_name="yield value")),
                (
                    "pot_life_min",
                    trials.models.fields.Number(
                        blank=True, help_text="at 23 °C", null=True, verbose_name="pot life of 100 g"
                    ),
                ),
                ("made_at", models.DateTimeField()),
                ("frozen_at", models.DateTimeField(blank=True, null=True)),
                (
                    "base",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.base",
                    ),
                ),
                (
                    "made_by",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to=settings.AUTH_USER_MODEL,
                    ),
                ),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.revision",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="revisionevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="Seal",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("sealed_at", models.DateTimeField()),
                ("from_xid", models.BigIntegerField()),
                ("to_xid", models.BigIntegerField()),
                ("events", models.BigIntegerField()),
                ("previous", models.CharField(max_length=64)),
                ("digest", models.CharField(max_length=64, unique=True)),
            ],
            options={
                "constraints": [
                    models.CheckConstraint(
                        condition=models.Q(("to_xid__gt", models.F("from_xid"))), name="seal_span"
                    ),
                    models.UniqueConstraint(fields=("from_xid",), name="seal_from_once"),
                ],
            },
        ),
        migrations.CreateModel(
            name="SeriesCriterion",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("weight", trials.models.fields.Number(default=1)),
                (
                    "criterion",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.PROTECT, related_name="+", to="trials.criterion"
                    ),
                ),
                (
                    "series",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.CASCADE, related_name="criteria", to="trials.series"
                    ),
                ),
            ],
            options={
                "constraints": [
                    models.UniqueConstraint(fields=("series", "criterion"), name="series_criterion_once"),
                    models.CheckConstraint(
                        condition=models.Q(("weight__isnull", True), ("weight__gte", 0), _connector="OR"),
                        name="series_criterion_weight_not_negative",
                        violation_error_message="Weight must not be below 0.",
                    ),
                ],
            },
        ),
        migrations.CreateModel(
            name="SeriesCriterionEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                ("weight", trials.models.fields.Number(default=1)),
                (
                    "criterion",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.criterion",
                    ),
                ),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.seriescriterion",
                    ),
                ),
                (
                    "series",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.series",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="seriescriterionevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="SeriesEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                ("restricted", models.BooleanField(default=False, verbose_name="only for named people")),
                ("number", models.PositiveIntegerField()),
                ("title", models.CharField(max_length=160)),
                ("question", models.TextField(blank=True, default="")),
                (
                    "round",
                    models.CharField(
                        choices=[
                            ("scout", "scout"),
                            ("ladder", "ladder"),
                            ("confirm", "confirm"),
                            ("pilot", "pilot"),
                            ("plant", "plant"),
                            ("field", "field"),
                            ("complaint", "complaint"),
                        ],
                        max_length=10,
                    ),
                ),
                (
                    "batch_mass_g",
                    trials.models.fields.Number(
                        help_text="all components, free of additive", verbose_name="mix of a cup"
                    ),
                ),
                (
                    "film_um",
                    trials.models.fields.Number(
                        blank=True, help_text="wet", null=True, verbose_name="film thickness"
                    ),
                ),
                (
                    "basis",
                    models.CharField(
                        choices=[("total", "total"), ("component", "component"), ("binder solids", "binder solids")],
                        default="total",
                        max_length=14,
                    ),
                ),
                (
                    "basis_component",
                    models.CharField(
                        blank=True, choices=[("A", "A"), ("B", "B"), ("C", "C")], default="", max_length=1
                    ),
                ),
                (
                    "counting",
                    models.CharField(
                        choices=[("on top", "on top"), ("within", "within")], default="on top", max_length=8
                    ),
                ),
                (
                    "supplied",
                    models.CharField(
                        choices=[("as supplied", "as supplied"), ("active", "active")],
                        default="as supplied",
                        max_length=12,
                        verbose_name="dosage of",
                    ),
                ),
                (
                    "stage",
                    models.CharField(
                        choices=[("grind", "grind"), ("let-down", "let-down"), ("post-addition", "post-addition")],
                        default="let-down",
                        max_length=16,
                    ),
                ),
                (
                    "into",
                    models.CharField(
                        choices=[("A", "A"), ("B", "B"), ("C", "C")],
                        default="A",
                        max_length=1,
                        verbose_name="additive goes into",
                    ),
                ),
                (
                    "ratio",
                    models.CharField(
                        choices=[("as sold", "as sold"), ("corrected", "corrected for the shift")],
                        default="as sold",
                        max_length=10,
                    ),
                ),
                (
                    "ladder_pct",
                    django.contrib.postgres.fields.ArrayField(
                        base_field=trials.models.fields.Number(), blank=True, default=list, size=None
                    ),
                ),
                ("replicates", models.PositiveSmallIntegerField(default=2)),
                (
                    "order_rule",
                    models.CharField(
                        choices=[
                            ("blanks first, dosage ascending", "blanks first, dosage ascending"),
                            ("silicone-free before silicone", "silicone-free before silicone"),
                            ("random", "random"),
                        ],
                        default="blanks first, dosage ascending",
                        max_length=40,
                    ),
                ),
                ("seed", models.PositiveIntegerField(default=0)),
                ("planned_at", models.DateTimeField()),
                (
                    "outcome",
                    models.CharField(
                        blank=True,
                        choices=[
                            ("works", "works"),
                            ("works within limits", "works within limits"),
                            ("fails", "fails"),
                            ("undecided", "undecided"),
                            ("not a fair test", "not a fair test"),
                        ],
                        default="",
                        max_length=20,
                    ),
                ),
                ("conclusion", models.TextField(blank=True, default="")),
                ("lesson", models.TextField(blank=True, default="")),
                ("not_tested", models.TextField(blank=True, default="", verbose_name="what was not tested")),
                ("window_from_pct", trials.models.fields.Number(blank=True, null=True, verbose_name="window from")),
                ("window_to_pct", trials.models.fields.Number(blank=True, null=True, verbose_name="window to")),
                ("working_pct", trials.models.fields.Number(blank=True, null=True, verbose_name="working dosage")),
                (
                    "common_batch",
                    models.ForeignKey(
                        blank=True,
                        db_constraint=False,
                        null=True,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.commonbatch",
                    ),
                ),
                (
                    "enquiry",
                    models.ForeignKey(
                        blank=True,
                        db_constraint=False,
                        null=True,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.enquiry",
                    ),
                ),
                (
                    "follows",
                    models.ForeignKey(
                        blank=True,
                        db_constraint=False,
                        null=True,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.series",
                    ),
                ),
                (
                    "owner",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to=settings.AUTH_USER_MODEL,
                    ),
                ),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.series",
                    ),
                ),
                (
                    "recommended",
                    models.ForeignKey(
                        blank=True,
                        db_constraint=False,
                        null=True,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.candidate",
                    ),
                ),
                (
                    "revision",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.revision",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="seriesevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="SeriesShare",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                (
                    "person",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.CASCADE, related_name="+", to=settings.AUTH_USER_MODEL
                    ),
                ),
                (
                    "series",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.CASCADE, related_name="shares", to="trials.series"
                    ),
                ),
            ],
            options={
                "constraints": [models.UniqueConstraint(fields=("series", "person"), name="series_share_once")],
            },
        ),
        migrations.CreateModel(
            name="SeriesShareEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                (
                    "person",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to=settings.AUTH_USER_MODEL,
                    ),
                ),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.seriesshare",
                    ),
                ),
                (
                    "series",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.series",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="seriesshareevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="Signature",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                (
                    "meaning",
                    models.CharField(
                        choices=[
                            ("performed", "performed"),
                            ("countersigned", "countersigned"),
                            ("amended", "amended"),
                        ],
                        max_length=14,
                    ),
                ),
                ("at", models.DateTimeField()),
                ("reason", models.TextField(blank=True, default="")),
                ("canon", models.PositiveSmallIntegerField(verbose_name="version of the canonical form")),
                ("canonical", models.TextField()),
                ("digest", models.CharField(max_length=64)),
                ("previous", models.CharField(blank=True, default="", max_length=64)),
                ("previous_all", models.CharField(blank=True, default="", max_length=64)),
                (
                    "xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                (
                    "person",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.PROTECT,
                        related_name="signatures",
                        to=settings.AUTH_USER_MODEL,
                    ),
                ),
                (
                    "revision",
                    models.ForeignKey(
                        blank=True,
                        null=True,
                        on_delete=django.db.models.deletion.PROTECT,
                        related_name="signatures",
                        to="trials.revision",
                    ),
                ),
                (
                    "series",
                    models.ForeignKey(
                        blank=True,
                        null=True,
                        on_delete=django.db.models.deletion.PROTECT,
                        related_name="signatures",
                        to="trials.series",
                    ),
                ),
                (
                    "trial",
                    models.ForeignKey(
                        blank=True,
                        null=True,
                        on_delete=django.db.models.deletion.PROTECT,
                        related_name="signatures",
                        to="trials.trial",
                    ),
                ),
            ],
            options={
                "constraints": [
                    models.CheckConstraint(
                        condition=models.Q(("meaning__in", ["performed", "countersigned", "amended"])),
                        name="signature_meaning_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            models.Q(("revision__isnull", True), ("series__isnull", False), ("trial__isnull", True)),
                            models.Q(("revision__isnull", True), ("series__isnull", True), ("trial__isnull", False)),
                            models.Q(("revision__isnull", False), ("series__isnull", True), ("trial__isnull", True)),
                            _connector="OR",
                        ),
                        name="signature_of_one_record",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            models.Q(("meaning", "amended"), _negated=True),
                            models.Q(("reason", ""), _negated=True),
                            _connector="OR",
                        ),
                        name="amendment_says_why",
                    ),
                ],
            },
        ),
        migrations.CreateModel(
            name="Step",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("value", trials.models.fields.Number()),
                ("says", models.CharField(max_length=160)),
                (
                    "criterion",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.CASCADE, related_name="steps", to="trials.criterion"
                    ),
                ),
            ],
            options={
                "constraints": [models.UniqueConstraint(fields=("criterion", "value"), name="step_value_once")],
            },
        ),
        migrations.CreateModel(
            name="StepEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                ("value", trials.models.fields.Number()),
                ("says", models.CharField(max_length=160)),
                (
                    "criterion",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.criterion",
                    ),
                ),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.step",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="stepevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="TrialSearch",
            fields=[
                (
                    "trial",
                    models.OneToOneField(
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        primary_key=True,
                        related_name="+",
                        serialize=False,
                        to="trials.trial",
                    ),
                ),
                ("at", models.DateTimeField()),
                ("tsv", django.contrib.postgres.search.SearchVectorField()),
                (
                    "series",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.DO_NOTHING, related_name="+", to="trials.series"
                    ),
                ),
            ],
            options={
                "indexes": [
                    django.contrib.postgres.indexes.GinIndex(
                        fastupdate=False, fields=["tsv"], name="trial_search_words"
                    ),
                    models.Index(fields=["-at", "-trial"], name="trial_search_newest"),
                ],
            },
        ),
        migrations.CreateModel(
            name="StoredTinEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                ("temperature_c", trials.models.fields.Number(blank=True, null=True, verbose_name="stored at")),
                ("days", models.PositiveSmallIntegerField(help_text="days", verbose_name="for")),
                ("stored_at", models.DateTimeField()),
                ("opened_at", models.DateTimeField(blank=True, null=True)),
                (
                    "appearance",
                    models.TextField(blank=True, default="", verbose_name="what stood in it before stirring"),
                ),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.storedtin",
                    ),
                ),
                (
                    "trial",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.trial",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="storedtinevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="SignatureEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                (
                    "meaning",
                    models.CharField(
                        choices=[
                            ("performed", "performed"),
                            ("countersigned", "countersigned"),
                            ("amended", "amended"),
                        ],
                        max_length=14,
                    ),
                ),
                ("at", models.DateTimeField()),
                ("reason", models.TextField(blank=True, default="")),
                ("canon", models.PositiveSmallIntegerField(verbose_name="version of the canonical form")),
                ("canonical", models.TextField()),
                ("digest", models.CharField(max_length=64)),
                ("previous", models.CharField(blank=True, default="", max_length=64)),
                ("previous_all", models.CharField(blank=True, default="", max_length=64)),
                (
                    "xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                (
                    "person",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to=settings.AUTH_USER_MODEL,
                    ),
                ),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.signature",
                    ),
                ),
                (
                    "revision",
                    models.ForeignKey(
                        blank=True,
                        db_constraint=False,
                        null=True,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.revision",
                    ),
                ),
                (
                    "series",
                    models.ForeignKey(
                        blank=True,
                        db_constraint=False,
                        null=True,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.series",
                    ),
                ),
                (
                    "trial",
                    models.ForeignKey(
                        blank=True,
                        db_constraint=False,
                        null=True,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.trial",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="signatureevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="RetainEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                ("what", models.CharField(blank=True, default="", max_length=120)),
                ("place", models.CharField(max_length=120, verbose_name="where")),
                ("until", models.DateField(blank=True, null=True, verbose_name="keep until")),
                ("lent_to", models.CharField(blank=True, default="", max_length=120)),
                ("lent_on", models.DateField(blank=True, null=True)),
                ("returned_on", models.DateField(blank=True, null=True)),
                (
                    "panel",
                    models.ForeignKey(
                        blank=True,
                        db_constraint=False,
                        null=True,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.panel",
                    ),
                ),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.retain",
                    ),
                ),
                (
                    "trial",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.trial",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="retainevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="PanelEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                ("code", models.CharField(max_length=6)),
                (
                    "substrate",
                    models.CharField(
                        choices=[
                            ("glass", "glass"),
                            ("fibre board", "fibre board"),
                            ("primed panel", "primed panel"),
                            ("concrete", "concrete"),
                            ("steel", "steel"),
                            ("film", "film"),
                        ],
                        default="glass",
                        max_length=14,
                    ),
                ),
                ("area_dm2", trials.models.fields.Number(blank=True, null=True, verbose_name="area")),
                ("mass_g", trials.models.fields.Number(blank=True, null=True, verbose_name="mass applied")),
                ("applied_at", models.DateTimeField(blank=True, null=True)),
                ("air_c", trials.models.fields.Number(blank=True, null=True, verbose_name="air")),
                ("humidity_pct", trials.models.fields.Number(blank=True, null=True, verbose_name="humidity")),
                ("substrate_c", trials.models.fields.Number(blank=True, null=True, verbose_name="substrate")),
                ("material_c", trials.models.fields.Number(blank=True, null=True, verbose_name="material")),
                ("remark", models.TextField(blank=True, default="")),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.panel",
                    ),
                ),
                (
                    "stored_tin",
                    models.ForeignKey(
                        blank=True,
                        db_constraint=False,
                        null=True,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.storedtin",
                    ),
                ),
                (
                    "trial",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.trial",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="panelevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="FindingEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                ("at", models.DateTimeField()),
                ("answers", models.JSONField(default=dict)),
                (
                    "cause",
                    models.CharField(
                        blank=True,
                        choices=[
                            ("entrained air", "entrained air"),
                            ("carbon dioxide", "carbon dioxide"),
                            ("outgassing", "outgassing of the substrate"),
                            ("solvent", "solvent"),
                            ("mixing", "mixing"),
                            ("contamination", "contamination"),
                            ("crystals", "crystals of the resin"),
                            ("additive haze", "haze of the additive"),
                            ("over-dosed", "over-dosed"),
                            ("under-sheared", "under-sheared"),
                            ("incompatible", "incompatible with this binder"),
                        ],
                        default="",
                        max_length=20,
                    ),
                ),
                ("remark", models.TextField(blank=True, default="")),
                (
                    "person",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to=settings.AUTH_USER_MODEL,
                    ),
                ),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.finding",
                    ),
                ),
                (
                    "trial",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.trial",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="findingevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="FailureEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                (
                    "mode",
                    models.CharField(
                        choices=[
                            ("bubbles", "bubbles stay in the film"),
                            ("micro-foam", "micro-foam"),
                            ("pinholes", "pinholes"),
                            ("craters", "craters"),
                            ("fish-eyes", "fish-eyes"),
                            ("crawling", "second coat crawls"),
                            ("poor levelling", "poor levelling"),
                            ("floating", "floating"),
                            ("haze", "haze"),
                            ("bleeding", "bleeding"),
                            ("amine blush", "amine blush"),
                            ("recoat adhesion", "no adhesion of the second coat"),
                            ("lost in storage", "effect lost in storage"),
                            ("separation", "separates in the tin"),
                            ("no effect", "no effect"),
                            ("yellowing", "yellowing"),
                            ("other", "other"),
                        ],
                        max_length=20,
                    ),
                ),
                ("severity", models.PositiveSmallIntegerField(help_text="1 slight to 5 severe")),
                ("how", models.TextField(blank=True, default="", verbose_name="how it showed")),
                (
                    "cause",
                    models.CharField(
                        blank=True,
                        choices=[
                            ("entrained air", "entrained air"),
                            ("carbon dioxide", "carbon dioxide"),
                            ("outgassing", "outgassing of the substrate"),
                            ("solvent", "solvent"),
                            ("mixing", "mixing"),
                            ("contamination", "contamination"),
                            ("crystals", "crystals of the resin"),
                            ("additive haze", "haze of the additive"),
                            ("over-dosed", "over-dosed"),
                            ("under-sheared", "under-sheared"),
                            ("incompatible", "incompatible with this binder"),
                        ],
                        default="",
                        max_length=20,
                    ),
                ),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.failure",
                    ),
                ),
                (
                    "trial",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.trial",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="failureevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="DosageEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                ("dosage_pct", trials.models.fields.Number(verbose_name="dosage")),
                (
                    "basis",
                    models.CharField(
                        choices=[("total", "total"), ("component", "component"), ("binder solids", "binder solids")],
                        max_length=14,
                    ),
                ),
                (
                    "basis_component",
                    models.CharField(
                        blank=True, choices=[("A", "A"), ("B", "B"), ("C", "C")], default="", max_length=1
                    ),
                ),
                ("counting", models.CharField(choices=[("on top", "on top"), ("within", "within")], max_length=8)),
                (
                    "supplied",
                    models.CharField(
                        choices=[("as supplied", "as supplied"), ("active", "active")],
                        default="as supplied",
                        max_length=12,
                        verbose_name="dosage of",
                    ),
                ),
                (
                    "stage",
                    models.CharField(
                        choices=[("grind", "grind"), ("let-down", "let-down"), ("post-addition", "post-addition")],
                        max_length=16,
                    ),
                ),
                (
                    "into",
                    models.CharField(
                        choices=[("A", "A"), ("B", "B"), ("C", "C")],
                        default="A",
                        max_length=1,
                        verbose_name="goes into",
                    ),
                ),
                (
                    "counts_in_ratio",
                    models.BooleanField(default=False, verbose_name="counts as part of its component"),
                ),
                ("planned_g", trials.models.fields.Number(verbose_name="planned")),
                ("weighed_g", trials.models.fields.Number(blank=True, null=True, verbose_name="weighed")),
                (
                    "candidate",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.candidate",
                    ),
                ),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.dosage",
                    ),
                ),
                (
                    "lot",
                    models.ForeignKey(
                        blank=True,
                        db_constraint=False,
                        null=True,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.lot",
                    ),
                ),
                (
                    "trial",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.trial",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="dosageevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="TrialEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                ("number", models.PositiveSmallIntegerField(verbose_name="cup")),
                ("code", models.CharField(max_length=16)),
                ("position", models.PositiveSmallIntegerField()),
                (
                    "part",
                    models.CharField(
                        choices=[
                            ("treated", "treated"),
                            ("blank", "blank"),
                            ("incumbent", "incumbent"),
                            ("vacuum reference", "vacuum reference"),
                            ("clean check", "clean check"),
                        ],
                        max_length=18,
                    ),
                ),
                (
                    "batch_mass_g",
                    trials.models.fields.Number(
                        blank=True, help_text="free of additive", null=True, verbose_name="mix of this cup"
                    ),
                ),
                (
                    "state",
                    models.CharField(
                        choices=[
                            ("planned", "planned"),
                            ("mixed", "mixed"),
                            ("applied", "applied"),
                            ("read", "read"),
                            ("closed", "closed"),
                        ],
                        default="planned",
                        max_length=8,
                    ),
                ),
                ("made_at", models.DateTimeField(blank=True, null=True)),
                ("mixed_at", models.DateTimeField(blank=True, null=True, verbose_name="A and B together at")),
                ("air_c", trials.models.fields.Number(blank=True, null=True, verbose_name="air")),
                ("humidity_pct", trials.models.fields.Number(blank=True, null=True, verbose_name="humidity")),
                ("remark", models.TextField(blank=True, default="")),
                (
                    "outcome",
                    models.CharField(
                        blank=True,
                        choices=[
                            ("works", "works"),
                            ("works within limits", "works within limits"),
                            ("fails", "fails"),
                            ("undecided", "undecided"),
                            ("not a fair test", "not a fair test"),
                        ],
                        default="",
                        max_length=20,
                    ),
                ),
                ("unfair_because", models.TextField(blank=True, default="", verbose_name="not a fair test because")),
                ("lesson", models.TextField(blank=True, default="")),
                (
                    "common_batch",
                    models.ForeignKey(
                        blank=True,
                        db_constraint=False,
                        null=True,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.commonbatch",
                    ),
                ),
                (
                    "made_by",
                    models.ForeignKey(
                        blank=True,
                        db_constraint=False,
                        null=True,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to=settings.AUTH_USER_MODEL,
                    ),
                ),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.trial",
                    ),
                ),
                (
                    "series",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.series",
                    ),
                ),
                (
                    "topped_up_from",
                    models.ForeignKey(
                        blank=True,
                        db_constraint=False,
                        null=True,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.trial",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="trialevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="Weighing",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("position", models.PositiveSmallIntegerField()),
                (
                    "letter",
                    models.CharField(
                        blank=True,
                        choices=[("A", "A"), ("B", "B"), ("C", "C")],
                        default="",
                        max_length=1,
                        verbose_name="component",
                    ),
                ),
                ("reading_g", trials.models.fields.Number(blank=True, null=True, verbose_name="reading")),
                ("cumulative", models.BooleanField(default=False)),
                ("word", models.CharField(blank=True, default="", max_length=60, verbose_name="instead of a figure")),
                ("at", models.DateTimeField(blank=True, null=True)),
                (
                    "balance",
                    models.ForeignKey(
                        blank=True,
                        null=True,
                        on_delete=django.db.models.deletion.PROTECT,
                        related_name="+",
                        to="trials.balance",
                    ),
                ),
                (
                    "dosage",
                    models.ForeignKey(
                        blank=True,
                        null=True,
                        on_delete=django.db.models.deletion.CASCADE,
                        related_name="weighings",
                        to="trials.dosage",
                    ),
                ),
                (
                    "trial",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.CASCADE, related_name="weighings", to="trials.trial"
                    ),
                ),
            ],
            options={
                "constraints": [
                    models.UniqueConstraint(fields=("trial", "position"), name="weighing_position_once"),
                    models.CheckConstraint(
                        condition=models.Q(
                            models.Q(("dosage__isnull", False), ("letter", "")),
                            models.Q(("dosage__isnull", True), ("letter__gt", "")),
                            _connector="OR",
                        ),
                        name="weighing_of_one_thing",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("reading_g__isnull", False), models.Q(("word", ""), _negated=True), _connector="OR"
                        ),
                        name="weighing_says_something",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("reading_g__isnull", True), ("reading_g__gte", 0), _connector="OR"),
                        name="weighing_reading_g_not_negative",
                        violation_error_message="Reading must not be below 0.",
                    ),
                ],
            },
        ),
        migrations.CreateModel(
            name="WeighingEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                ("position", models.PositiveSmallIntegerField()),
                (
                    "letter",
                    models.CharField(
                        blank=True,
                        choices=[("A", "A"), ("B", "B"), ("C", "C")],
                        default="",
                        max_length=1,
                        verbose_name="component",
                    ),
                ),
                ("reading_g", trials.models.fields.Number(blank=True, null=True, verbose_name="reading")),
                ("cumulative", models.BooleanField(default=False)),
                ("word", models.CharField(blank=True, default="", max_length=60, verbose_name="instead of a figure")),
                ("at", models.DateTimeField(blank=True, null=True)),
                (
                    "balance",
                    models.ForeignKey(
                        blank=True,
                        db_constraint=False,
                        null=True,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.balance",
                    ),
                ),
                (
                    "dosage",
                    models.ForeignKey(
                        blank=True,
                        db_constraint=False,
                        null=True,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.dosage",
                    ),
                ),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.weighing",
                    ),
                ),
                (
                    "trial",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.trial",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="weighingevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="WetReading",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                (
                    "quantity",
                    models.CharField(
                        choices=[
                            ("density", "density, g/mL"),
                            ("air-free density", "air-free density, g/mL"),
                            ("level", "level in a marked cup, mm"),
                            ("bubble-free after", "film bubble-free after, min"),
                            ("viscosity", "viscosity, mPa·s"),
                            ("pot life", "pot life, min"),
                            ("temperature", "temperature, °C"),
                            ("clarity", "clarity, in words"),
                            ("appearance", "appearance, in words"),
                        ],
                        max_length=20,
                    ),
                ),
                (
                    "where",
                    models.CharField(
                        choices=[("A", "component A"), ("B", "component B"), ("mix", "the mix")],
                        default="A",
                        max_length=4,
                    ),
                ),
                ("value", trials.models.fields.Number(blank=True, null=True)),
                (
                    "word",
                    models.CharField(blank=True, default="", max_length=160, verbose_name="instead of a figure"),
                ),
                (
                    "minutes",
                    trials.models.fields.Number(
                        blank=True,
                        help_text="since stirring, or since mixing A and B",
                        null=True,
                        verbose_name="after",
                    ),
                ),
                ("method", models.CharField(blank=True, default="", max_length=120)),
                ("at", models.DateTimeField(blank=True, null=True)),
                (
                    "common_batch",
                    models.ForeignKey(
                        blank=True,
                        null=True,
                        on_delete=django.db.models.deletion.CASCADE,
                        related_name="wet_readings",
                        to="trials.commonbatch",
                    ),
                ),
                (
                    "person",
                    models.ForeignKey(
                        blank=True,
                        null=True,
                        on_delete=django.db.models.deletion.PROTECT,
                        related_name="+",
                        to=settings.AUTH_USER_MODEL,
                    ),
                ),
                (
                    "trial",
                    models.ForeignKey(
                        blank=True,
                        null=True,
                        on_delete=django.db.models.deletion.CASCADE,
                        related_name="wet_readings",
                        to="trials.trial",
                    ),
                ),
            ],
            options={
                "constraints": [
                    models.CheckConstraint(
                        condition=models.Q(
                            (
                                "quantity__in",
                                [
                                    "density",
                                    "air-free density",
                                    "level",
                                    "bubble-free after",
                                    "viscosity",
                                    "pot life",
                                    "temperature",
                                    "clarity",
                                    "appearance",
                                ],
                            )
                        ),
                        name="wet_reading_quantity_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("where__in", ["A", "B", "mix"])), name="wet_reading_where_known"
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            models.Q(("common_batch__isnull", True), ("trial__isnull", False)),
                            models.Q(("common_batch__isnull", False), ("trial__isnull", True)),
                            _connector="OR",
                        ),
                        name="wet_reading_of_one_thing",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(
                            ("value__isnull", False), models.Q(("word", ""), _negated=True), _connector="OR"
                        ),
                        name="wet_reading_says_something",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("minutes__isnull", True), ("minutes__gte", 0), _connector="OR"),
                        name="wet_reading_minutes_not_negative",
                        violation_error_message="Minutes must not be below 0.",
                    ),
                ],
            },
        ),
        migrations.CreateModel(
            name="WetReadingEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                (
                    "quantity",
                    models.CharField(
                        choices=[
                            ("density", "density, g/mL"),
                            ("air-free density", "air-free density, g/mL"),
                            ("level", "level in a marked cup, mm"),
                            ("bubble-free after", "film bubble-free after, min"),
                            ("viscosity", "viscosity, mPa·s"),
                            ("pot life", "pot life, min"),
                            ("temperature", "temperature, °C"),
                            ("clarity", "clarity, in words"),
                            ("appearance", "appearance, in words"),
                        ],
                        max_length=20,
                    ),
                ),
                (
                    "where",
                    models.CharField(
                        choices=[("A", "component A"), ("B", "component B"), ("mix", "the mix")],
                        default="A",
                        max_length=4,
                    ),
                ),
                ("value", trials.models.fields.Number(blank=True, null=True)),
                (
                    "word",
                    models.CharField(blank=True, default="", max_length=160, verbose_name="instead of a figure"),
                ),
                (
                    "minutes",
                    trials.models.fields.Number(
                        blank=True,
                        help_text="since stirring, or since mixing A and B",
                        null=True,
                        verbose_name="after",
                    ),
                ),
                ("method", models.CharField(blank=True, default="", max_length=120)),
                ("at", models.DateTimeField(blank=True, null=True)),
                (
                    "common_batch",
                    models.ForeignKey(
                        blank=True,
                        db_constraint=False,
                        null=True,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.commonbatch",
                    ),
                ),
                (
                    "person",
                    models.ForeignKey(
                        blank=True,
                        db_constraint=False,
                        null=True,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to=settings.AUTH_USER_MODEL,
                    ),
                ),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.wetreading",
                    ),
                ),
                (
                    "trial",
                    models.ForeignKey(
                        blank=True,
                        db_constraint=False,
                        null=True,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.trial",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="wetreadingevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="Working",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("position", models.PositiveSmallIntegerField()),
                (
                    "kind",
                    models.CharField(
                        choices=[
                            ("disperse", "disperse"),
                            ("rest", "rest"),
                            ("aerate", "aerate"),
                            ("mix", "mix A and B"),
                        ],
                        max_length=10,
                    ),
                ),
                ("blade_mm", trials.models.fields.Number(blank=True, null=True, verbose_name="blade or disc")),
                ("vessel_mm", trials.models.fields.Number(blank=True, null=True, verbose_name="vessel")),
                ("rpm", trials.models.fields.Number(blank=True, null=True, verbose_name="speed")),
                ("minutes", trials.models.fields.Number(blank=True, null=True, verbose_name="time")),
                ("temperature_c", trials.models.fields.Number(blank=True, null=True, verbose_name="temperature")),
                ("vacuum_mbar", trials.models.fields.Number(blank=True, null=True, verbose_name="vacuum, absolute")),
                ("remark", models.CharField(blank=True, default="", max_length=160)),
                (
                    "equipment",
                    models.ForeignKey(
                        blank=True,
                        null=True,
                        on_delete=django.db.models.deletion.PROTECT,
                        related_name="workings",
                        to="trials.equipment",
                    ),
                ),
                (
                    "trial",
                    models.ForeignKey(
                        on_delete=django.db.models.deletion.CASCADE, related_name="workings", to="trials.trial"
                    ),
                ),
            ],
            options={
                "constraints": [
                    models.UniqueConstraint(fields=("trial", "position"), name="working_position_once"),
                    models.CheckConstraint(
                        condition=models.Q(("kind__in", ["disperse", "rest", "aerate", "mix"])),
                        name="working_kind_known",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("blade_mm__isnull", True), ("blade_mm__gt", 0), _connector="OR"),
                        name="working_blade_mm_positive",
                        violation_error_message="Blade mm must be above 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("vessel_mm__isnull", True), ("vessel_mm__gt", 0), _connector="OR"),
                        name="working_vessel_mm_positive",
                        violation_error_message="Vessel mm must be above 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("rpm__isnull", True), ("rpm__gte", 0), _connector="OR"),
                        name="working_rpm_not_negative",
                        violation_error_message="Rpm must not be below 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("minutes__isnull", True), ("minutes__gte", 0), _connector="OR"),
                        name="working_minutes_not_negative",
                        violation_error_message="Minutes must not be below 0.",
                    ),
                    models.CheckConstraint(
                        condition=models.Q(("vacuum_mbar__isnull", True), ("vacuum_mbar__gte", 0), _connector="OR"),
                        name="working_vacuum_mbar_not_negative",
                        violation_error_message="Vacuum mbar must not be below 0.",
                    ),
                ],
            },
        ),
        migrations.CreateModel(
            name="WorkingEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                ("position", models.PositiveSmallIntegerField()),
                (
                    "kind",
                    models.CharField(
                        choices=[
                            ("disperse", "disperse"),
                            ("rest", "rest"),
                            ("aerate", "aerate"),
                            ("mix", "mix A and B"),
                        ],
                        max_length=10,
                    ),
                ),
                ("blade_mm", trials.models.fields.Number(blank=True, null=True, verbose_name="blade or disc")),
                ("vessel_mm", trials.models.fields.Number(blank=True, null=True, verbose_name="vessel")),
                ("rpm", trials.models.fields.Number(blank=True, null=True, verbose_name="speed")),
                ("minutes", trials.models.fields.Number(blank=True, null=True, verbose_name="time")),
                ("temperature_c", trials.models.fields.Number(blank=True, null=True, verbose_name="temperature")),
                ("vacuum_mbar", trials.models.fields.Number(blank=True, null=True, verbose_name="vacuum, absolute")),
                ("remark", models.CharField(blank=True, default="", max_length=160)),
                (
                    "equipment",
                    models.ForeignKey(
                        blank=True,
                        db_constraint=False,
                        null=True,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.equipment",
                    ),
                ),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.working",
                    ),
                ),
                (
                    "trial",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="+",
                        related_query_name="+",
                        to="trials.trial",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="workingevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
        migrations.CreateModel(
            name="BalanceEvent",
            fields=[
                ("pgh_id", models.AutoField(primary_key=True, serialize=False)),
                ("pgh_created_at", models.DateTimeField(auto_now_add=True)),
                ("pgh_label", models.TextField(help_text="The event label.")),
                (
                    "pgh_xid",
                    models.BigIntegerField(db_default=trials.models.history.CurrentTransaction(), editable=False),
                ),
                ("pgh_context", pghistory.utils.JSONField(null=True)),
                ("pgh_context_id", models.UUIDField(null=True)),
                ("id", models.BigIntegerField()),
                ("name", models.CharField(max_length=60)),
                ("step_g", trials.models.fields.Number(verbose_name="reads to")),
                ("retired", models.BooleanField(default=False)),
                (
                    "pgh_obj",
                    models.ForeignKey(
                        db_constraint=False,
                        on_delete=django.db.models.deletion.DO_NOTHING,
                        related_name="events",
                        to="trials.balance",
                    ),
                ),
            ],
            options={
                "abstract": False,
                "indexes": [
                    django.contrib.postgres.indexes.BrinIndex(
                        fields=["pgh_xid"], name="balanceevent_xid", pages_per_range=16
                    )
                ],
            },
        ),
    ]
