from django.urls import path

from . import views

urlpatterns = [
    path("enquiries/", views.enquiries, name="enquiries"),
    path("enquiries/new/", views.enquiry_new, name="enquiry_new"),
    path("enquiries/<int:number>/", views.enquiry, name="enquiry"),
    path("enquiries/<int:number>/change/", views.enquiry_change, name="enquiry_change"),
    path("enquiries/<int:number>/who/", views.enquiry_share, name="enquiry_share"),
    path("enquiries/<int:number>/answered/", views.enquiry_close, name="enquiry_close"),
]
