from django.contrib.auth import update_session_auth_hash
from django.shortcuts import get_object_or_404, redirect, render
from django.views.decorators.debug import sensitive_post_parameters

from trials import access
from trials.models import Person
from trials.operations.people import add_person, change_own_password, change_person
from trials.pages.parts import needs, told_at
from trials.pages.password import is_own_password
from trials.queries.history import what_changed

from .keeping_forms import NewPersonForm, OwnPasswordForm, PersonForm


@needs(access.may_manage)
def people(request):
    everybody = Person.objects.order_by("-is_active", "full_name", "pk")
    return render(request, "people/list.html", {"people": everybody})


@needs(access.may_manage)
@sensitive_post_parameters("password")
def person_new(request):
    form = NewPersonForm(request.POST or None)
    if request.method == "POST" and form.is_valid():
        with told_at(form):
            add_person(actor=request.user, **form.cleaned_data)
            return redirect("people")
    return render(request, "people/form.html", {"form": form, "heading": "A new person"})


@needs(access.may_manage)
@sensitive_post_parameters("password")
def person_change(request, pk):
    person = get_object_or_404(Person, pk=pk)
    form = PersonForm(request.POST or None, instance=person)
    if request.method == "POST" and form.is_valid():
        with told_at(form):
            change_person(actor=request.user, person=person, **form.changed())
            _stay_signed_in(request, person, form)
            return redirect("people")
    context = {
        "form": form,
        "heading": f"Change {person.full_name}",
        "events": what_changed(person),
        "person": person,
    }
    return render(request, "people/form.html", context)


@sensitive_post_parameters("old", "password", "again")
def own_password(request):
    form = OwnPasswordForm(request.POST or None)
    if request.method == "POST" and form.is_valid():
        typed = form.cleaned_data
        # Asked as at the door, so that guessing at an open screen is slowed down as it is there.
        wrong = is_own_password(request, typed["old"])
        if wrong:
            form.add_error("old", wrong)
            return render(request, "people/own_password.html", {"form": form})
        with told_at(form):
            change_own_password(actor=request.user, old=typed["old"], new=typed["password"])
            update_session_auth_hash(request, request.user)
            return render(request, "people/password_changed.html")
    return render(request, "people/own_password.html", {"form": form})


def _stay_signed_in(request, person, form):
    """Who changes the own password here is not signed out by it; everybody else is, everywhere."""
    if person == request.user and form.cleaned_data["password"]:
        update_session_auth_hash(request, person)
