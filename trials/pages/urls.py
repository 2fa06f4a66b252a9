"""Every address of the notebook; each noun keeps its own."""

from django.urls import include, path

from . import today

urlpatterns = [
    path("", today.today, name="today"),
    path("", include("trials.pages.people.urls")),
    path("", include("trials.pages.materials.urls")),
    path("", include("trials.pages.candidates.urls")),
    path("", include("trials.pages.bases.urls")),
    path("", include("trials.pages.enquiries.urls")),
    path("", include("trials.pages.series.urls")),
    path("", include("trials.pages.equipment.urls")),
    path("", include("trials.pages.trials.urls")),
    path("", include("trials.pages.panels.urls")),
    path("", include("trials.pages.judging.urls")),
    path("", include("trials.pages.causes.urls")),
    path("", include("trials.pages.sums.urls")),
    path("", include("trials.pages.reports.urls")),
    path("", include("trials.pages.signing.urls")),
    path("", include("trials.pages.find.urls")),
    path("", include("trials.pages.trends.urls")),
]
