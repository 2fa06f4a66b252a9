"""Who is at the bench."""

from django.contrib.auth.base_user import AbstractBaseUser, BaseUserManager
from django.db import models

from .fields import one_of
from .history import recorded


class Role(models.TextChoices):
    BENCH = "bench", "bench"
    SUPERVISOR = "supervisor", "supervisor"
    READER = "reader", "reader"
    ADMINISTRATOR = "administrator", "administrator"


class PersonManager(BaseUserManager):
    def get_by_natural_key(self, username):
        return self.get(sign_in_name__iexact=username)


@recorded(exclude=("password", "last_login"))
class Person(AbstractBaseUser):
    """One person, one role: the role is a column so that history and constraints hold it like any other fact."""

    sign_in_name = models.CharField("sign-in name", max_length=40, unique=True)
    full_name = models.CharField("name", max_length=120)
    initials = models.CharField(max_length=6)
    role = models.CharField(max_length=16, choices=Role, default=Role.BENCH)
    is_active = models.BooleanField("may sign in", default=True)

    objects = PersonManager()
    USERNAME_FIELD = "sign_in_name"
    REQUIRED_FIELDS = ["full_name", "initials"]

    class Meta:
        constraints = [one_of("role", Role, table="person")]

    def __str__(self):
        return self.full_name
