import re
import sys
from io import BytesIO

import pytest
import typst
from PIL import Image

from tests.making import NOW
from tests.reports.conftest import CUSTOMER
from tests.reports.paper import facts_of, pages_of, pictures_in, text_of
from trials.models import Panel, Photo
from trials.operations.photos import PhotoEntry, add_photos
from trials.operations.signing import sign
from trials.queries.trials import load_trial
from trials.reports.pdf import NotTypeset, pdf
from trials.reports.trial import trial_report
from trials.reports.typesetting import SHOWN, showable

pytestmark = pytest.mark.django_db
HOSTILE = r'#read("/etc/passwd") ] } $x$ *b* _i_ <script>alert(1)</script> \u{41} @who // /* ` = +'


def test_every_page_has_code_signing_state_and_number(report_of, series, bench):
    sign(actor=bench, now=NOW, record=series, meaning="performed")
    pages = pages_of(pdf(report_of(bench), now=NOW))
    assert len(pages) > 2
    for number, page in enumerate(pages, 1):
        assert "Series 417 · signed, printed 2 Mar 2026" in page
        assert f"page {number} of {len(pages)}" in page
    assert series.signatures.get().digest in " ".join(pages)


def test_trial_report_has_its_own_code_on_every_page(series, bench):
    report = trial_report(load_trial(bench, "417-17"), bench, now=NOW)
    pages = pages_of(pdf(report, now=NOW))
    assert all("Cup 417-17 · not signed" in page for page in pages)
    assert "AR-01 0.5 %" in pages[0]


def test_file_is_archivable_and_tagged_for_reading_aloud(report_of, bench):
    made = pdf(report_of(bench), now=NOW)
    # ISO 19005-2 and ISO 14289-1 have a file name its conformance in its XMP metadata, which stays uncompressed.
    said = re.sub(rb"\s", b"", made)
    assert b"<pdfaid:part>2</pdfaid:part><pdfaid:conformance>B</pdfaid:conformance>" in said
    assert b"<pdfuaid:part>1</pdfuaid:part>" in said
    assert re.search(rb"/Lang\s*\(en-GB\)", made)
    facts = facts_of(made)
    assert facts["Tagged"] == "yes"
    assert facts["Title"] == "Series report, Series 417"
    assert "Author" not in facts


@pytest.mark.parametrize(
    ("paper", "size"), [("a4", "595.276 x 841.89 pts (A4)"), ("letter", "612 x 792 pts (letter)")]
)
def test_paper_is_a4_or_letter(report_of, bench, paper, size):
    assert facts_of(pdf(report_of(bench), now=NOW, paper=paper))["Page size"] == size


def test_another_paper_is_refused(report_of, bench):
    with pytest.raises(ValueError, match="a4, letter; got 'a5'"):
        pdf(report_of(bench), now=NOW, paper="a5")


def test_what_people_typed_stays_text(report_of, series, bench):
    for field in ("title", "question", "conclusion", "lesson", "not_tested"):
        setattr(series, field, f"{field}: {HOSTILE}")
    series.save()
    cup = series.trials.get(number=5)
    cup.outcome, cup.unfair_because = "not a fair test", HOSTILE
    cup.save()
    text = text_of(pdf(report_of(bench), now=NOW))
    for field in ("title", "question", "conclusion", "lesson", "not_tested"):
        assert f"{field}: {HOSTILE}" in text
    assert f"417-5: judged not a fair test: {HOSTILE}" in text
    assert "root:" not in text


def test_a_character_without_a_shape_is_named_by_its_number(report_of, series, bench):
    series.question = "bell \a and µ, tab\tand 気泡 and 🫧"
    series.save()
    text = text_of(pdf(report_of(bench), now=NOW))
    assert "bell [U+0007] and µ" in text
    assert "気" in text or "[U+6C17][U+6CE1]" in text


def test_shapes_that_are_taken_for_granted_come_with_the_typesetter(tmp_path):
    every = [chr(code) for code in range(32, sys.maxunicode) if not 0xD800 <= code < 0xE000]
    granted = "".join(char for char in every if not SHOWN.match(char))
    assert len(granted) > 300
    assert showable(granted) == granted
    source = tmp_path / "all.typ"
    source.write_text('#set document(title: "All")\n#set text(font: "Libertinus Serif")\n#sys.inputs.text')
    typst.compile(
        source,
        font_paths=typst.Fonts(include_system_fonts=False),
        sys_inputs={"text": " ".join(granted)},
        pdf_standards=["a-2b", "ua-1"],
    )


def test_names_are_nowhere_in_what_goes_outside(report_of, series, bench):
    made = pdf(report_of(bench, outside=True), now=NOW)
    text = text_of(made)
    assert CUSTOMER in text_of(pdf(report_of(bench), now=NOW))
    for name in (CUSTOMER, "Bench One", "Supervisor"):
        assert name not in text
        assert name.encode() not in made
    assert "Series 417 · not signed · names withheld" in text


@pytest.fixture
def photographed(series, bench, settings, tmp_path):
    storage = {"BACKEND": "django.core.files.storage.FileSystemStorage", "OPTIONS": {"location": tmp_path}}
    settings.STORAGES = {**settings.STORAGES, "default": storage}
    content = BytesIO()
    Image.effect_noise((160, 120), 60).convert("RGB").save(content, "JPEG")
    entries = [
        PhotoEntry(Panel.objects.get(trial__code=code), content.getvalue(), "film.jpg", mm_per_px=1, age_h=24)
        for code in ("417-1", "417-17")
    ]
    add_photos(actor=bench, now=NOW, entries=entries)
    return tmp_path


def test_photographs_stand_in_the_file(report_of, photographed, bench):
    made = pdf(report_of(bench), now=NOW)
    assert pictures_in(made) == 2
    assert "All at one scale; of larger photographs the middle 160 × 120 mm." in text_of(made)


def test_a_photograph_that_is_gone_is_said_to_be_gone(report_of, photographed, bench):
    for photo in Photo.objects.all():
        (photographed / photo.picture).unlink(missing_ok=True)
    made = pdf(report_of(bench), now=NOW)
    assert pictures_in(made) == 0
    assert "The file of this photograph is missing." in text_of(made)


def test_typesetter_that_gives_up_says_why(report_of, bench, monkeypatch, tmp_path):
    (tmp_path / "series.typ").write_text("#panic(sys.inputs.report.len() > 0)")
    monkeypatch.setattr("trials.reports.pdf.SOURCES", tmp_path)
    with pytest.raises(NotTypeset, match="panicked with: true"):
        pdf(report_of(bench), now=NOW)


def test_same_report_makes_the_same_file(report_of, bench):
    report = report_of(bench)
    assert pdf(report, now=NOW) == pdf(report, now=NOW)
