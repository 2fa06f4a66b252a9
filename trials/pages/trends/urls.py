from django.urls import path

from . import views

urlpatterns = [
    path("trends/", views.trends, name="trends"),
    path("trends/numbers.csv", views.trends_csv, name="trends_csv"),
]
