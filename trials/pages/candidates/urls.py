from django.urls import path

from . import views

urlpatterns = [
    path("additives/", views.candidates, name="candidates"),
    path("additives/<str:code>/", views.candidate, name="candidate"),
    path("additives/<str:code>/change/", views.candidate_change, name="candidate_change"),
    path("materials/<str:code>/additive/new/", views.candidate_new, name="candidate_new"),
]
