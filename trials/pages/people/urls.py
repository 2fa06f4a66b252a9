from django.urls import path

from . import views

urlpatterns = [
    path("sign-in/", views.sign_in, name="sign_in"),
    path("sign-out/", views.sign_out, name="sign_out"),
    path("change-person/", views.change_person, name="change_person"),
    path("lock/", views.lock, name="lock"),
    path("locked/", views.locked, name="locked"),
    path("unlock/", views.unlock, name="unlock"),
]
