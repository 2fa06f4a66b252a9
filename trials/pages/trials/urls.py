from django.urls import path

from . import applied, views

urlpatterns = [
    path("trials/<str:code>/", views.trial, name="trial"),
    path("trials/<str:code>/weighings/", views.trial_weighings, name="trial_weighings"),
    path("trials/<str:code>/workings/", views.trial_workings, name="trial_workings"),
    path("trials/<str:code>/wet/", views.trial_wet, name="trial_wet"),
    path("trials/<str:code>/made/", views.trial_made, name="trial_made"),
    path("trials/<str:code>/panels/", applied.trial_panels, name="trial_panels"),
    path("trials/<str:code>/tins/", applied.trial_tins, name="trial_tins"),
    path("trials/<str:code>/kept/", applied.trial_retains, name="trial_retains"),
    path("trials/<str:code>/top-up/", applied.trial_top_up, name="trial_top_up"),
    path("tins/<int:pk>/", applied.trial_tin, name="trial_tin"),
    path("kept/<int:pk>/", applied.trial_retain, name="trial_retain"),
]
