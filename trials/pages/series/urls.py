from django.urls import path

from . import batches, cups, views, weighing

urlpatterns = [
    path("series/", views.series_list, name="series_list"),
    path("series/new/", views.series_new, name="series_new"),
    path("series/<int:number>/", views.series, name="series"),
    path("series/<int:number>/change/", views.series_change, name="series_change"),
    path("series/<int:number>/who/", views.series_share, name="series_share"),
    path("series/<int:number>/weighing/", weighing.series_weighing, name="series_weighing"),
    path("series/<int:number>/cup/", cups.series_cup, name="series_cup"),
    path("series/<int:number>/cup/<str:code>/remove/", cups.series_cup_remove, name="series_cup_remove"),
    path("common-batches/", batches.common_batches, name="common_batches"),
    path("bases/<str:code>/<int:number>/common-batch/", batches.common_batch_new, name="common_batch_new"),
]
