"""Every address of the notebook; each noun keeps its own."""

from django.urls import include, path

from . import today

urlpatterns = [
    path("", today.today, name="today"),
    path("", include("trials.pages.people.urls")),
    path("", include("trials.pages.materials.urls")),
    path("", include("trials.pages.candidates.urls")),
    path("", include("trials.pages.bases.urls")),
    path("", include("trials.pages.signing.urls")),
]
