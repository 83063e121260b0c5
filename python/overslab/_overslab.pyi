"""The native module behind the package: made from the table of operations; do not edit."""

from typing import Any, Final

from overslab.results import AnswerResult as AnswerResult
from overslab.results import ArrayResult as ArrayResult
from overslab.results import Record as Record
from overslab.results import ScalarResult as ScalarResult
from overslab.typing import Row
from overslab.grade import fall as fall
from overslab.grade import Fall as Fall
from overslab.grade import FallArray as FallArray
from overslab.grade import drop as drop
from overslab.grade import Drop as Drop
from overslab.grade import DropArray as DropArray
from overslab.grade import triangular_prism as triangular_prism
from overslab.grade import TriangularPrism as TriangularPrism
from overslab.grade import TriangularPrismArray as TriangularPrismArray
from overslab.order import prismoid as prismoid
from overslab.order import Prismoid as Prismoid
from overslab.order import PrismoidArray as PrismoidArray
from overslab.order import trucks as trucks
from overslab.order import Trucks as Trucks
from overslab.order import TrucksArray as TrucksArray
from overslab.order import order as order
from overslab.order import Order as Order

__version__: Final[str]
OPERATIONS: Final[dict[str, Row]]

def _restore_scalar(*kept: Any) -> Any: ...

def _restore_array(*kept: Any) -> Any: ...

def _restore_record(*kept: Any) -> Any: ...

def _restore_answer(*kept: Any) -> Any: ...
