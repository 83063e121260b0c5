import sys
sys.path.insert(0,'tests/calc')
from harness import Calc
with Calc("build/overslab.oxt") as calc:
    calc.load("examples/boat_store.fods"); calc.recalculate()
    for r in range(1,40):
        a=calc.result(f"Floor.A{r}"); 
        if a is not None: print(r,a,calc.result(f"Floor.B{r}"),calc.result(f"Floor.C{r}"),calc.result(f"Floor.D{r}"),calc.result(f"Floor.E{r}"))
    for r in range(1,8): print(calc.result(f"Report.A{r}"),calc.result(f"Report.B{r}"))
