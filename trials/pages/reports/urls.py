from django.urls import path

from . import views

urlpatterns = [
    path("series/<int:number>/report/", views.series_report_page, name="series_report"),
    path("series/<int:number>/report.pdf", views.series_report_pdf, name="series_report_pdf"),
    path("trials/<str:code>/report/", views.trial_report_page, name="trial_report"),
    path("trials/<str:code>/report.pdf", views.trial_report_pdf, name="trial_report_pdf"),
]
