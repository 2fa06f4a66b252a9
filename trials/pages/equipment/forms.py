"""What is typed about balances and stirring equipment."""

from trials.models import Balance, Equipment
from trials.pages.record_form import RecordForm


class EquipmentForm(RecordForm):
    class Meta:
        model = Equipment
        fields = ["name", "blade_mm", "retired"]


class BalanceForm(RecordForm):
    class Meta:
        model = Balance
        fields = ["name", "step_g", "retired"]
