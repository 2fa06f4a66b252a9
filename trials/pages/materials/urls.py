from django.urls import path

from . import lots, papers, views

urlpatterns = [
    path("materials/", views.materials, name="materials"),
    path("materials/new/", views.material_new, name="material_new"),
    path("materials/<str:code>/", views.material, name="material"),
    path("materials/<str:code>/change/", views.material_change, name="material_change"),
    path("materials/<str:code>/lots/new/", lots.material_lot_new, name="material_lot_new"),
    path("materials/<str:code>/papers/new/", papers.material_paper_new, name="material_paper_new"),
    path("lots/<int:pk>/change/", lots.material_lot_change, name="material_lot_change"),
    path("papers/<int:pk>/change/", papers.material_paper_change, name="material_paper_change"),
    path("papers/<int:pk>/remove/", papers.material_paper_remove, name="material_paper_remove"),
]
