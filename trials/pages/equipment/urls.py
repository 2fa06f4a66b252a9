from django.urls import path

from . import views

urlpatterns = [
    path("equipment/", views.equipment, name="equipment"),
    path("equipment/new/", views.equipment_new, name="equipment_new"),
    path("equipment/<int:pk>/change/", views.equipment_change, name="equipment_change"),
    path("equipment/<int:pk>/cleaned/", views.equipment_clean, name="equipment_clean"),
    path("equipment/balances/new/", views.balance_new, name="balance_new"),
    path("equipment/balances/<int:pk>/change/", views.balance_change, name="balance_change"),
]
