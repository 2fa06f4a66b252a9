from django.urls import path

from . import photos, views

urlpatterns = [
    path("series/<int:number>/rate/", views.series_rate, name="series_rate"),
    path("trials/<str:code>/rate/", views.trial_rate, name="trial_rate"),
    path("panels/<str:code>/", views.panel, name="panel"),
    path("panels/<str:code>/change/", views.panel_change, name="panel_change"),
    path("panels/<str:code>/rate/", views.panel_rate, name="panel_rate"),
    path("panels/<str:code>/photos/", photos.panel_photos, name="panel_photos"),
    path("ratings/<int:pk>/back/", views.rating_back, name="panel_rating_back"),
    path("photos/<int:pk>/", photos.photo, name="photo"),
    path("photos/<int:pk>/change/", photos.photo_change, name="photo_change"),
    path("photos/<int:pk>/small/", photos.photo_small, name="photo_small"),
]
