from django.urls import include, path

urlpatterns = [path("", include("trials.pages.urls"))]

handler403 = "trials.pages.errors.forbidden"
handler404 = "trials.pages.errors.not_found"
handler500 = "trials.pages.errors.broken"
