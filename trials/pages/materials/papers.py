from django.shortcuts import get_object_or_404, redirect, render
from django.views.decorators.http import require_POST

from trials import access
from trials.models import Paper, RawMaterial
from trials.operations.materials import add_paper, change_paper, remove_paper
from trials.pages.parts import needs, told_at

from .forms import PaperForm


@needs(access.may_write)
def material_paper_new(request, code):
    material = get_object_or_404(RawMaterial, code=code)
    form = PaperForm(request.POST or None)
    if request.method == "POST" and form.is_valid():
        with told_at(form):
            add_paper(actor=request.user, material=material, **form.cleaned_data)
            return redirect("material", code)
    return _typing(request, form, material, f"A new paper on {code}")


@needs(access.may_write)
def material_paper_change(request, pk):
    paper = _paper(pk)
    form = PaperForm(request.POST or None, instance=paper)
    if request.method == "POST" and form.is_valid():
        with told_at(form):
            change_paper(actor=request.user, paper=paper, **form.changed())
            return redirect("material", paper.material.code)
    return _typing(request, form, paper.material, f"Change a paper on {paper.material.code}", paper)


@needs(access.may_write)
@require_POST
def material_paper_remove(request, pk):
    paper = _paper(pk)
    remove_paper(actor=request.user, paper=paper)
    return redirect("material", paper.material.code)


def _paper(pk):
    return get_object_or_404(Paper.objects.select_related("material"), pk=pk)


def _typing(request, form, material, heading, paper=None):
    context = {"form": form, "heading": heading, "material": material, "paper": paper}
    return render(request, "materials/paper_form.html", context)
