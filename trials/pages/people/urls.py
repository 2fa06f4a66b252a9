from django.urls import path

from . import keeping, views

urlpatterns = [
    path("sign-in/", views.sign_in, name="sign_in"),
    path("sign-out/", views.sign_out, name="sign_out"),
    path("change-person/", views.change_person, name="change_person"),
    path("lock/", views.lock, name="lock"),
    path("locked/", views.locked, name="locked"),
    path("unlock/", views.unlock, name="unlock"),
    path("people/", keeping.people, name="people"),
    path("people/new/", keeping.person_new, name="person_new"),
    path("people/<int:pk>/change/", keeping.person_change, name="person_change"),
    path("own-password/", keeping.own_password, name="own_password"),
]
