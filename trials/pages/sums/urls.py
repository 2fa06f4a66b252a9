from django.urls import path

from . import views

urlpatterns = [
    path("sums/", views.sums, name="sums"),
    path("sums/<slug:slug>/", views.one_sum, name="sum"),
]
