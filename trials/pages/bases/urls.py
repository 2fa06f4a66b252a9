from django.urls import path

from . import views

urlpatterns = [
    path("bases/", views.bases, name="bases"),
    path("bases/new/", views.base_new, name="base_new"),
    path("bases/<str:code>/", views.base, name="base"),
    path("bases/<str:code>/change/", views.base_change, name="base_change"),
    path("bases/<str:code>/who/", views.base_share, name="base_share"),
    path("bases/<str:code>/compare/", views.base_compare, name="base_compare"),
    path("bases/<str:code>/<int:number>/", views.base, name="base_revision"),
    path("bases/<str:code>/<int:number>/recipe/", views.base_recipe, name="base_recipe"),
    path("bases/<str:code>/<int:number>/measured/", views.base_measured, name="base_measured"),
    path("bases/<str:code>/<int:number>/next/", views.base_next, name="base_next"),
    path("bases/<str:code>/<int:number>/copy/", views.base_copy, name="base_copy"),
    path("bases/<str:code>/<int:number>/freeze/", views.base_freeze, name="base_freeze"),
]
