from django.urls import path

from . import views

urlpatterns = [
    path("series/<int:number>/judge/", views.series_judge, name="series_judge"),
    path("series/<int:number>/comparison.csv", views.series_comparison_csv, name="series_comparison_csv"),
    path("trials/<str:code>/judge/", views.trial_judge, name="trial_judge"),
]
