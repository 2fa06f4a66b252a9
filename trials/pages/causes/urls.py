from django.urls import path

from . import views

urlpatterns = [
    path("bubbles/", views.bubbles, name="bubbles"),
    path("trials/<str:code>/cause/", views.trial_cause, name="trial_cause"),
]
