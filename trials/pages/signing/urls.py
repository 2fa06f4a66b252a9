from django.urls import path

from . import views

urlpatterns = [
    path("series/<int:number>/sign/", views.series_sign, name="series_sign"),
    path("series/<int:number>/signed/", views.series_signed, name="series_signed"),
    path("trials/<str:code>/sign/", views.trial_sign, name="trial_sign"),
    path("trials/<str:code>/signed/", views.trial_signed, name="trial_signed"),
]
