Attribute VB_Name = "OverslabSpecimen"
Option Explicit

' Overslab in Excel: worksheet functions that call the library overslab-0.dll, which lies in the folder of this workbook
' (or add-in). Made from the table of operations; do not edit.
'
' OVS_<NAME>_US and _SI give the results; a bare number is in the unit that the argument's name ends with, a text such as
' "2 1/2 in" says its own. What is refused is an error value: #NUM! where a number lies outside its range, else #VALUE!.
' _WHY with the same arguments gives the reason, or the notes on the result, or an empty text. _GET gives one result by name;
' "names" gives the names. dll_... are the functions of the library themselves, for macros; units stand in their arguments.
'
' For 64-bit Office on Windows. In a text that crosses to the library every character beyond ASCII is escaped.

#If VBA7 Then
Private Declare PtrSafe Function dll_load Lib "kernel32" Alias "LoadLibraryW" (ByVal file As LongPtr) As LongPtr
Private Declare PtrSafe Function dll_abi_version Lib "overslab-0.dll" Alias "ovs_abi_version" () As Long
Private Declare PtrSafe Function dll_version Lib "overslab-0.dll" Alias "ovs_version" (ByRef text_value As Byte, ByVal text_len As Long) As Long
Private Declare PtrSafe Function dll_sheet_values Lib "overslab-0.dll" Alias "ovs_sheet_values" (ByVal request As String, ByVal request_len As Long, ByRef numbers As Double, ByRef kinds As Long, ByVal capacity As Long, ByRef rows As Long, ByRef columns As Long, ByRef texts As Byte, ByVal texts_len As Long, ByRef needed As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_specimen_scalar_us Lib "overslab-0.dll" Alias "ovs_specimen_scalar_us" (ByVal step_in As Double, ByVal times As Long, ByVal colour As Long, ByRef total_ft As Double, ByRef colour_out As Long, ByRef count As Long, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare PtrSafe Function dll_specimen_scalar_si Lib "overslab-0.dll" Alias "ovs_specimen_scalar_si" (ByVal step_mm As Double, ByVal times As Long, ByVal colour As Long, ByRef total_m As Double, ByRef colour_out As Long, ByRef count As Long, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
#Else
Private Declare Function dll_load Lib "kernel32" Alias "LoadLibraryW" (ByVal file As Long) As Long
Private Declare Function dll_abi_version Lib "overslab-0.dll" Alias "ovs_abi_version" () As Long
Private Declare Function dll_version Lib "overslab-0.dll" Alias "ovs_version" (ByRef text_value As Byte, ByVal text_len As Long) As Long
Private Declare Function dll_sheet_values Lib "overslab-0.dll" Alias "ovs_sheet_values" (ByVal request As String, ByVal request_len As Long, ByRef numbers As Double, ByRef kinds As Long, ByVal capacity As Long, ByRef rows As Long, ByRef columns As Long, ByRef texts As Byte, ByVal texts_len As Long, ByRef needed As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_specimen_scalar_us Lib "overslab-0.dll" Alias "ovs_specimen_scalar_us" (ByVal step_in As Double, ByVal times As Long, ByVal colour As Long, ByRef total_ft As Double, ByRef colour_out As Long, ByRef count As Long, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
Public Declare Function dll_specimen_scalar_si Lib "overslab-0.dll" Alias "ovs_specimen_scalar_si" (ByVal step_mm As Double, ByVal times As Long, ByVal colour As Long, ByRef total_m As Double, ByRef colour_out As Long, ByRef count As Long, ByRef notes_value As Long, ByRef msg As Byte, ByVal msg_len As Long) As Long
#End If

Private Const LIBRARY As String = "overslab-0.dll"
Private Const ABI As Long = 0

' Kinds of a cell in an answer.
Private Const CELL_NUMBER As Long = 1
Private Const CELL_TEXT As Long = 2
Private Const CELL_REFUSED As Long = 3

' Statuses that are looked at.
Private Const BUFFER_SHORT As Long = 94
Private Const NOT_FINITE As Long = 15
Private Const NEGATIVE As Long = 16
Private Const OUT_OF_RANGE As Long = 17

Private Const ERROR_VALUE As Long = 2015
Private Const ERROR_NUM As Long = 2036

Private ready As Boolean

' The version of the library; where it cannot be used, which file was looked for and why not.
Public Function OVS_SPECIMEN_VERSION() As Variant
    Dim text(0 To 63) As Byte, trouble As String
    trouble = LibraryTrouble()
    If trouble = "" Then
        If dll_version(text(0), 64) = 0 Then trouble = FromUtf8(text, LengthOf(text))
    End If
    OVS_SPECIMEN_VERSION = trouble
End Function

' One line that names the file where the library cannot be used, else an empty text.
Private Function LibraryTrouble() As String
    Dim file As String
    If ready Then Exit Function
    If LCase$(Left$(ThisWorkbook.Path, 4)) = "http" Then
        LibraryTrouble = "OVERSLAB: the workbook lies at " & ThisWorkbook.Path & ": save it in a folder of this PC, beside " & LIBRARY
        Exit Function
    End If
    file = ThisWorkbook.Path & "\" & LIBRARY
    On Error GoTo Unusable
    If dll_load(StrPtr(file)) = 0 Then
        LibraryTrouble = "OVERSLAB: " & file & " " & LoadTrouble(Err.LastDllError)
    ElseIf dll_abi_version() <> ABI Then
        LibraryTrouble = "OVERSLAB: " & file & " has ABI " & dll_abi_version() & ", this module needs " & ABI & ": take both from one package"
    Else
        ready = True
    End If
    Exit Function
Unusable:
    LibraryTrouble = "OVERSLAB: " & file & " cannot be used: " & Err.Description
End Function

' The words for the errors of Windows on loading a library.
Private Function LoadTrouble(ByVal number As Long) As String
    Select Case number
        Case 2, 3, 126
            LoadTrouble = "is missing: put it beside this workbook"
        Case 193
            LoadTrouble = "is not for this Office: it takes the 64-bit library and 64-bit Office"
        Case Else
            LoadTrouble = "cannot be loaded, error " & number & " of Windows"
    End Select
End Function

' The error value for a status.
Private Function ErrorFor(ByVal status As Long) As Variant
    Select Case status
        Case NOT_FINITE, NEGATIVE, OUT_OF_RANGE
            ErrorFor = CVErr(ERROR_NUM)
        Case Else
            ErrorFor = CVErr(ERROR_VALUE)
    End Select
End Function

' The body of every function: cells in, cells out.
Private Function Called(ByVal operation As String, ByVal system As String, ByVal want As String, ByVal result As Variant, ByVal given As Variant) As Variant
    Dim request As String, fault As Variant, trouble As String
    request = RequestFor(operation, system, want, result, given, fault)
    If IsError(fault) Then
        Called = fault
        Exit Function
    End If
    trouble = LibraryTrouble()
    If trouble = "" Then
        Called = Asked(request, want)
    ElseIf want = "why" Then
        Called = trouble
    Else
        Called = CVErr(ERROR_VALUE)
    End If
End Function

' Asks the library, with more room where the answer needs it.
Private Function Asked(ByVal request As String, ByVal want As String) As Variant
    Dim numbers() As Double, kinds() As Long, texts() As Byte, msg(0 To 255) As Byte
    Dim capacity As Long, room As Long, rows As Long, columns As Long, needed As Long, status As Long, turn As Long
    capacity = 64
    room = 4096
    For turn = 1 To 2
        ReDim numbers(0 To capacity - 1)
        ReDim kinds(0 To capacity - 1)
        ReDim texts(0 To room - 1)
        status = dll_sheet_values(request, Len(request), numbers(0), kinds(0), capacity, rows, columns, texts(0), room, needed, msg(0), 256)
        If status <> BUFFER_SHORT Then Exit For
        If rows * columns > capacity Then capacity = rows * columns
        If needed > room Then room = needed
    Next turn
    If status = 0 Then
        Asked = Assembled(numbers, kinds, rows, columns, FromUtf8(texts, needed - 1))
    ElseIf want = "why" Then
        Asked = FromUtf8(msg, LengthOf(msg))
    Else
        Asked = ErrorFor(status)
    End If
End Function

' The cells of an answer: one value, or rows of them. An empty cell is an empty text, since nothing would show as a zero.
Private Function Assembled(ByVal numbers As Variant, ByVal kinds As Variant, ByVal rows As Long, ByVal columns As Long, ByVal texts As String) As Variant
    Dim made() As Variant, words As Variant, row As Long, column As Long, place As Long, word As Long
    words = Split(texts, Chr$(10))
    ReDim made(1 To rows, 1 To columns)
    For row = 1 To rows
        For column = 1 To columns
            Select Case kinds(place)
                Case CELL_NUMBER
                    made(row, column) = numbers(place)
                Case CELL_TEXT
                    If word <= UBound(words) Then made(row, column) = words(word) Else made(row, column) = ""
                    word = word + 1
                Case CELL_REFUSED
                    made(row, column) = ErrorFor(CLng(numbers(place)))
                Case Else
                    made(row, column) = ""
            End Select
            place = place + 1
        Next column
    Next row
    If rows = 1 And columns = 1 Then Assembled = made(1, 1) Else Assembled = made
End Function

' The request as JSON. An error in a cell comes back as the fault: what depends on it is that error too.
Private Function RequestFor(ByVal operation As String, ByVal system As String, ByVal want As String, ByVal result As Variant, ByVal given As Variant, ByRef fault As Variant) As String
    Dim parts() As String, index As Long, last As Long, text As String
    text = "{""operation"":" & JsonText(operation) & ",""system"":" & JsonText(system) & ",""want"":" & JsonText(want)
    If want = "get" Then
        result = ValueOf(result)
        If IsError(result) Then
            fault = result
            Exit Function
        End If
        If IsArray(result) Then result = ""
        text = text & ",""result"":" & JsonText(CStr(result))
    End If
    last = UBound(given)
    Do While last >= 0
        If Not Missing(given(last)) Then Exit Do
        last = last - 1
    Loop
    text = text & ",""empty"":""null"",""arguments"":["
    If last >= 0 Then
        ReDim parts(0 To last)
        For index = 0 To last
            parts(index) = JsonArgument(given(index), fault)
        Next index
        text = text & Join(parts, ",")
    End If
    RequestFor = text & "]}"
End Function

' Whether an argument was left out; in an array it is still told apart.
Private Function Missing(ByVal given As Variant) As Boolean
    Missing = IsMissing(given)
End Function

' A range, an array or a value.
Private Function JsonArgument(ByVal given As Variant, ByRef fault As Variant) As String
    Dim held As Variant
    If Missing(given) Then
        JsonArgument = "null"
        Exit Function
    End If
    held = ValueOf(given)
    If Not IsArray(held) Then
        JsonArgument = JsonCell(held, fault)
    ElseIf Dimensions(held) = 1 Then
        JsonArgument = "[" & JsonRow(held, fault) & "]"
    Else
        JsonArgument = JsonRows(held, fault)
    End If
End Function

' What a range holds, or the value itself.
Private Function ValueOf(ByVal given As Variant) As Variant
    If IsObject(given) Then ValueOf = HeldBy(given) Else ValueOf = given
End Function

' A date or an amount of money in a cell is its plain number.
Private Function HeldBy(ByVal area As Object) As Variant
    HeldBy = area.Value2
End Function

Private Function JsonRow(ByVal cells As Variant, ByRef fault As Variant) As String
    Dim parts() As String, column As Long
    ReDim parts(LBound(cells) To UBound(cells))
    For column = LBound(cells) To UBound(cells)
        parts(column) = JsonCell(cells(column), fault)
    Next column
    JsonRow = "[" & Join(parts, ",") & "]"
End Function

Private Function JsonRows(ByVal cells As Variant, ByRef fault As Variant) As String
    Dim rows() As String, parts() As String, row As Long, column As Long
    ReDim rows(LBound(cells, 1) To UBound(cells, 1))
    For row = LBound(cells, 1) To UBound(cells, 1)
        ReDim parts(LBound(cells, 2) To UBound(cells, 2))
        For column = LBound(cells, 2) To UBound(cells, 2)
            parts(column) = JsonCell(cells(row, column), fault)
        Next column
        rows(row) = "[" & Join(parts, ",") & "]"
    Next row
    JsonRows = "[" & Join(rows, ",") & "]"
End Function

' How many dimensions an array has: one or two; there is no other way to ask than to try.
Private Function Dimensions(ByVal cells As Variant) As Long
    Dim bound As Long
    Dimensions = 1
    On Error GoTo Done
    bound = UBound(cells, 2)
    Dimensions = 2
Done:
End Function

Private Function JsonCell(ByVal cell As Variant, ByRef fault As Variant) As String
    If IsError(cell) Then
        If Not IsError(fault) Then fault = cell
        JsonCell = "null"
    ElseIf IsEmpty(cell) Or IsNull(cell) Then
        JsonCell = "null"
    Else
        Select Case VarType(cell)
            Case vbString
                JsonCell = JsonText(CStr(cell))
            Case vbBoolean
                If cell Then JsonCell = "true" Else JsonCell = "false"
            Case Else
                JsonCell = JsonNumber(CDbl(cell))
        End Select
    End If
End Function

' A number to the last bit. Str$ has fifteen digits only, whatever the language of the PC, so what they cannot hold goes as
' whole numbers: sign * (high * 2 ^ 26 + low) * 2 ^ power.
Private Function JsonNumber(ByVal number As Double) As String
    Dim whole As Double, high As Double, power As Long
    If number = 0 Then
        JsonNumber = "0"
        Exit Function
    End If
    If Abs(number) < 1000000000# And number = Int(number) Then
        JsonNumber = Trim$(Str$(number))
        Exit Function
    End If
    power = Int(Log(Abs(number)) / Log(2#)) - 52
    If power < -1074 Then power = -1074
    whole = Scaled(Abs(number), -power)
    Do While whole <> Int(whole)
        power = power - 1
        whole = Scaled(Abs(number), -power)
    Loop
    high = Int(whole / 67108864#)
    JsonNumber = "{""exact"":[" & Sgn(number) & "," & Trim$(Str$(high)) & "," & Trim$(Str$(whole - high * 67108864#)) & "," & power & "]}"
End Function

' number * 2 ^ power, in two steps, since 2 ^ 1074 is no double.
Private Function Scaled(ByVal number As Double, ByVal power As Long) As Double
    Dim half As Long
    half = power \ 2
    Scaled = number * 2# ^ half * 2# ^ (power - half)
End Function

' A text in JSON, in ASCII.
Private Function JsonText(ByVal text As String) As String
    Dim made As String, at As Long, code As Long
    For at = 1 To Len(text)
        code = AscW(Mid$(text, at, 1)) And 65535
        If code < 32 Or code > 126 Or code = 34 Or code = 92 Then
            made = made & "\u" & Right$("000" & Hex$(code), 4)
        Else
            made = made & Mid$(text, at, 1)
        End If
    Next at
    JsonText = """" & made & """"
End Function

' The bytes before the first zero.
Private Function LengthOf(ByVal bytes As Variant) As Long
    Dim at As Long
    For at = LBound(bytes) To UBound(bytes)
        If bytes(at) = 0 Then Exit For
    Next at
    LengthOf = at - LBound(bytes)
End Function

' The text in so many bytes of UTF-8, as the library writes it.
Private Function FromUtf8(ByVal bytes As Variant, ByVal length As Long) As String
    Dim made As String, at As Long, code As Long, more As Long, filled As Long
    If length <= 0 Then Exit Function
    made = Space$(length)
    Do While at < length
        code = bytes(at)
        more = 0
        If code >= 240 Then
            code = code And 7
            more = 3
        ElseIf code >= 224 Then
            code = code And 15
            more = 2
        ElseIf code >= 192 Then
            code = code And 31
            more = 1
        End If
        at = at + 1
        Do While more > 0 And at < length
            code = code * 64 + (bytes(at) And 63)
            at = at + 1
            more = more - 1
        Loop
        If code >= 65536 Then
            Mid$(made, filled + 1, 1) = ChrW(55296 + (code - 65536) \ 1024)
            filled = filled + 1
            code = 56320 + (code - 65536) Mod 1024
        End If
        Mid$(made, filled + 1, 1) = ChrW(code)
        filled = filled + 1
    Loop
    FromUtf8 = Left$(made, filled)
End Function

' Whether all arguments are plain numbers that the library's own function takes; "w" stands for a whole number.
Private Function Flat(ByVal given As Variant, ByVal kinds As String, ByRef numbers() As Double) As Boolean
    Dim index As Long, cell As Variant
    For index = 0 To UBound(given)
        cell = ValueOf(given(index))
        If IsArray(cell) Or IsError(cell) Then Exit Function
        If VarType(cell) <> vbDouble And VarType(cell) <> vbLong And VarType(cell) <> vbInteger Then Exit Function
        numbers(index) = cell
        If Mid$(kinds, index + 1, 1) = "w" Then
            If numbers(index) <> Int(numbers(index)) Or Abs(numbers(index)) > 2147483647# Then Exit Function
        End If
    Next index
    Flat = (LibraryTrouble() = "")
End Function

' Several results side by side.
Private Function SideBySide(ByVal results As Variant) As Variant
    Dim made() As Variant, index As Long
    ReDim made(1 To 1, 1 To UBound(results) + 1)
    For index = 0 To UBound(results)
        made(1, index + 1) = results(index)
    Next index
    SideBySide = made
End Function

' Test only: a scalar row with a number, a count and a choice.
' step_in: one step (in); at least 0 in, at most 3937.00787402 in
' times: how often; a whole number from 0 to 1000
' colour: a colour; red or dark blue
' Gives total_ft (the sum of the steps), colour (the same colour), count (times and one).
Public Function OVS_SPECIMEN_SCALAR_US(ByVal step_in As Variant, ByVal times As Variant, ByVal colour As Variant) As Variant
    OVS_SPECIMEN_SCALAR_US = Called("specimen_scalar", "us", "value", "", Array(step_in, times, colour))
End Function

Public Function OVS_SPECIMEN_SCALAR_US_WHY(ByVal step_in As Variant, ByVal times As Variant, ByVal colour As Variant) As Variant
    OVS_SPECIMEN_SCALAR_US_WHY = Called("specimen_scalar", "us", "why", "", Array(step_in, times, colour))
End Function

Public Function OVS_SPECIMEN_SCALAR_US_GET(ByVal result As Variant, ByVal step_in As Variant, ByVal times As Variant, ByVal colour As Variant) As Variant
    OVS_SPECIMEN_SCALAR_US_GET = Called("specimen_scalar", "us", "get", result, Array(step_in, times, colour))
End Function

' Test only: a scalar row with a number, a count and a choice.
' step_mm: one step (mm); at least 0 mm, at most 100000 mm
' times: how often; a whole number from 0 to 1000
' colour: a colour; red or dark blue
' Gives total_m (the sum of the steps), colour (the same colour), count (times and one).
Public Function OVS_SPECIMEN_SCALAR_SI(ByVal step_mm As Variant, ByVal times As Variant, ByVal colour As Variant) As Variant
    OVS_SPECIMEN_SCALAR_SI = Called("specimen_scalar", "si", "value", "", Array(step_mm, times, colour))
End Function

Public Function OVS_SPECIMEN_SCALAR_SI_WHY(ByVal step_mm As Variant, ByVal times As Variant, ByVal colour As Variant) As Variant
    OVS_SPECIMEN_SCALAR_SI_WHY = Called("specimen_scalar", "si", "why", "", Array(step_mm, times, colour))
End Function

Public Function OVS_SPECIMEN_SCALAR_SI_GET(ByVal result As Variant, ByVal step_mm As Variant, ByVal times As Variant, ByVal colour As Variant) As Variant
    OVS_SPECIMEN_SCALAR_SI_GET = Called("specimen_scalar", "si", "get", result, Array(step_mm, times, colour))
End Function

' Test only: a record made from a table, with optional ports.
' rows: the rows; a range with the columns at_ft, [hits], [colour], [remark], [depth_in]
' label: a label; a text; left out: plain, because most are
' Gives specimen (the record).
Public Function OVS_SPECIMEN_FROM_TABLE_US(ByVal rows As Variant, Optional ByVal label As Variant) As Variant
    OVS_SPECIMEN_FROM_TABLE_US = Called("specimen_from_table", "us", "value", "", Array(rows, label))
End Function

Public Function OVS_SPECIMEN_FROM_TABLE_US_WHY(ByVal rows As Variant, Optional ByVal label As Variant) As Variant
    OVS_SPECIMEN_FROM_TABLE_US_WHY = Called("specimen_from_table", "us", "why", "", Array(rows, label))
End Function

Public Function OVS_SPECIMEN_FROM_TABLE_US_GET(ByVal result As Variant, ByVal rows As Variant, Optional ByVal label As Variant) As Variant
    OVS_SPECIMEN_FROM_TABLE_US_GET = Called("specimen_from_table", "us", "get", result, Array(rows, label))
End Function

' Test only: a record made from a table, with optional ports.
' rows: the rows; a range with the columns at_m, [hits], [colour], [remark], [depth_mm]
' label: a label; a text; left out: plain, because most are
' Gives specimen (the record).
Public Function OVS_SPECIMEN_FROM_TABLE_SI(ByVal rows As Variant, Optional ByVal label As Variant) As Variant
    OVS_SPECIMEN_FROM_TABLE_SI = Called("specimen_from_table", "si", "value", "", Array(rows, label))
End Function

Public Function OVS_SPECIMEN_FROM_TABLE_SI_WHY(ByVal rows As Variant, Optional ByVal label As Variant) As Variant
    OVS_SPECIMEN_FROM_TABLE_SI_WHY = Called("specimen_from_table", "si", "why", "", Array(rows, label))
End Function

Public Function OVS_SPECIMEN_FROM_TABLE_SI_GET(ByVal result As Variant, ByVal rows As Variant, Optional ByVal label As Variant) As Variant
    OVS_SPECIMEN_FROM_TABLE_SI_GET = Called("specimen_from_table", "si", "get", result, Array(rows, label))
End Function

' Test only: every kind of port, required and optional, in and out.
' volume_yd3: a volume (yd3); more than 0 yd3
' times: a count; a whole number from 0 to 1000
' colour: a colour; red or dark blue
' label: a text; a text
' rows: a table; a range with the columns at_ft, [hits], [colour], [remark], [depth_in]
' specimen: a record; a range of path, value, unit, as OVS_SPECIMEN_FROM_TABLE_US gives
' waste_percent: an optional share (%); at least 0 %; left out: 5 %, because usual
' again: an optional count; a whole number from 0 to 1000; may be left out
' shade: an optional colour; red or dark blue; left out: red, because plain
' remark: an optional text; a text; may be left out
' more: an optional table; a range with the columns share_percent; may be left out
' other: an optional record; a range of path, value, unit, as OVS_SPECIMEN_FROM_TABLE_US gives; may be left out
' Gives volume_yd3 (the volume with its share), count (the sum of the counts), colour (the second colour), label (the texts joined), rows (the same table), specimen (the last record given).
Public Function OVS_SPECIMEN_EVERY_KIND_US(ByVal volume_yd3 As Variant, ByVal times As Variant, ByVal colour As Variant, ByVal label As Variant, ByVal rows As Variant, ByVal specimen As Variant, Optional ByVal waste_percent As Variant, Optional ByVal again As Variant, Optional ByVal shade As Variant, Optional ByVal remark As Variant, Optional ByVal more As Variant, Optional ByVal other As Variant) As Variant
    OVS_SPECIMEN_EVERY_KIND_US = Called("specimen_every_kind", "us", "value", "", Array(volume_yd3, times, colour, label, rows, specimen, waste_percent, again, shade, remark, more, other))
End Function

Public Function OVS_SPECIMEN_EVERY_KIND_US_WHY(ByVal volume_yd3 As Variant, ByVal times As Variant, ByVal colour As Variant, ByVal label As Variant, ByVal rows As Variant, ByVal specimen As Variant, Optional ByVal waste_percent As Variant, Optional ByVal again As Variant, Optional ByVal shade As Variant, Optional ByVal remark As Variant, Optional ByVal more As Variant, Optional ByVal other As Variant) As Variant
    OVS_SPECIMEN_EVERY_KIND_US_WHY = Called("specimen_every_kind", "us", "why", "", Array(volume_yd3, times, colour, label, rows, specimen, waste_percent, again, shade, remark, more, other))
End Function

Public Function OVS_SPECIMEN_EVERY_KIND_US_GET(ByVal result As Variant, ByVal volume_yd3 As Variant, ByVal times As Variant, ByVal colour As Variant, ByVal label As Variant, ByVal rows As Variant, ByVal specimen As Variant, Optional ByVal waste_percent As Variant, Optional ByVal again As Variant, Optional ByVal shade As Variant, Optional ByVal remark As Variant, Optional ByVal more As Variant, Optional ByVal other As Variant) As Variant
    OVS_SPECIMEN_EVERY_KIND_US_GET = Called("specimen_every_kind", "us", "get", result, Array(volume_yd3, times, colour, label, rows, specimen, waste_percent, again, shade, remark, more, other))
End Function

' Test only: every kind of port, required and optional, in and out.
' volume_m3: a volume (m3); more than 0 m3
' times: a count; a whole number from 0 to 1000
' colour: a colour; red or dark blue
' label: a text; a text
' rows: a table; a range with the columns at_m, [hits], [colour], [remark], [depth_mm]
' specimen: a record; a range of path, value, unit, as OVS_SPECIMEN_FROM_TABLE_SI gives
' waste_percent: an optional share (%); at least 0 %; left out: 5 %, because usual
' again: an optional count; a whole number from 0 to 1000; may be left out
' shade: an optional colour; red or dark blue; left out: red, because plain
' remark: an optional text; a text; may be left out
' more: an optional table; a range with the columns share_percent; may be left out
' other: an optional record; a range of path, value, unit, as OVS_SPECIMEN_FROM_TABLE_SI gives; may be left out
' Gives volume_m3 (the volume with its share), count (the sum of the counts), colour (the second colour), label (the texts joined), rows (the same table), specimen (the last record given).
Public Function OVS_SPECIMEN_EVERY_KIND_SI(ByVal volume_m3 As Variant, ByVal times As Variant, ByVal colour As Variant, ByVal label As Variant, ByVal rows As Variant, ByVal specimen As Variant, Optional ByVal waste_percent As Variant, Optional ByVal again As Variant, Optional ByVal shade As Variant, Optional ByVal remark As Variant, Optional ByVal more As Variant, Optional ByVal other As Variant) As Variant
    OVS_SPECIMEN_EVERY_KIND_SI = Called("specimen_every_kind", "si", "value", "", Array(volume_m3, times, colour, label, rows, specimen, waste_percent, again, shade, remark, more, other))
End Function

Public Function OVS_SPECIMEN_EVERY_KIND_SI_WHY(ByVal volume_m3 As Variant, ByVal times As Variant, ByVal colour As Variant, ByVal label As Variant, ByVal rows As Variant, ByVal specimen As Variant, Optional ByVal waste_percent As Variant, Optional ByVal again As Variant, Optional ByVal shade As Variant, Optional ByVal remark As Variant, Optional ByVal more As Variant, Optional ByVal other As Variant) As Variant
    OVS_SPECIMEN_EVERY_KIND_SI_WHY = Called("specimen_every_kind", "si", "why", "", Array(volume_m3, times, colour, label, rows, specimen, waste_percent, again, shade, remark, more, other))
End Function

Public Function OVS_SPECIMEN_EVERY_KIND_SI_GET(ByVal result As Variant, ByVal volume_m3 As Variant, ByVal times As Variant, ByVal colour As Variant, ByVal label As Variant, ByVal rows As Variant, ByVal specimen As Variant, Optional ByVal waste_percent As Variant, Optional ByVal again As Variant, Optional ByVal shade As Variant, Optional ByVal remark As Variant, Optional ByVal more As Variant, Optional ByVal other As Variant) As Variant
    OVS_SPECIMEN_EVERY_KIND_SI_GET = Called("specimen_every_kind", "si", "get", result, Array(volume_m3, times, colour, label, rows, specimen, waste_percent, again, shade, remark, more, other))
End Function

' Test only: numbers, counts and words out of a record and an option.
' specimen: a record; a range of path, value, unit, as OVS_SPECIMEN_FROM_TABLE_US gives
' gap_in: an optional length (in); at least 0 in, at most 3937.00787402 in; may be left out
' Gives half_in (half of its size), letters (letters of its label), colour (dark blue with a gap, red without), gap_ft (the gap, where it was given).
Public Function OVS_SPECIMEN_NUMBERS_US(ByVal specimen As Variant, Optional ByVal gap_in As Variant) As Variant
    OVS_SPECIMEN_NUMBERS_US = Called("specimen_numbers", "us", "value", "", Array(specimen, gap_in))
End Function

Public Function OVS_SPECIMEN_NUMBERS_US_WHY(ByVal specimen As Variant, Optional ByVal gap_in As Variant) As Variant
    OVS_SPECIMEN_NUMBERS_US_WHY = Called("specimen_numbers", "us", "why", "", Array(specimen, gap_in))
End Function

Public Function OVS_SPECIMEN_NUMBERS_US_GET(ByVal result As Variant, ByVal specimen As Variant, Optional ByVal gap_in As Variant) As Variant
    OVS_SPECIMEN_NUMBERS_US_GET = Called("specimen_numbers", "us", "get", result, Array(specimen, gap_in))
End Function

' Test only: numbers, counts and words out of a record and an option.
' specimen: a record; a range of path, value, unit, as OVS_SPECIMEN_FROM_TABLE_SI gives
' gap_mm: an optional length (mm); at least 0 mm, at most 100000 mm; may be left out
' Gives half_mm (half of its size), letters (letters of its label), colour (dark blue with a gap, red without), gap_m (the gap, where it was given).
Public Function OVS_SPECIMEN_NUMBERS_SI(ByVal specimen As Variant, Optional ByVal gap_mm As Variant) As Variant
    OVS_SPECIMEN_NUMBERS_SI = Called("specimen_numbers", "si", "value", "", Array(specimen, gap_mm))
End Function

Public Function OVS_SPECIMEN_NUMBERS_SI_WHY(ByVal specimen As Variant, Optional ByVal gap_mm As Variant) As Variant
    OVS_SPECIMEN_NUMBERS_SI_WHY = Called("specimen_numbers", "si", "why", "", Array(specimen, gap_mm))
End Function

Public Function OVS_SPECIMEN_NUMBERS_SI_GET(ByVal result As Variant, ByVal specimen As Variant, Optional ByVal gap_mm As Variant) As Variant
    OVS_SPECIMEN_NUMBERS_SI_GET = Called("specimen_numbers", "si", "get", result, Array(specimen, gap_mm))
End Function

' Test only: the sum of readings, in a table of which no column is required.
' readings: the readings; a range with the columns [remark], [reading_in]
' Gives sum_in (their sum), given (how many were given).
Public Function OVS_SPECIMEN_SUM_US(ByVal readings As Variant) As Variant
    OVS_SPECIMEN_SUM_US = Called("specimen_sum", "us", "value", "", Array(readings))
End Function

Public Function OVS_SPECIMEN_SUM_US_WHY(ByVal readings As Variant) As Variant
    OVS_SPECIMEN_SUM_US_WHY = Called("specimen_sum", "us", "why", "", Array(readings))
End Function

Public Function OVS_SPECIMEN_SUM_US_GET(ByVal result As Variant, ByVal readings As Variant) As Variant
    OVS_SPECIMEN_SUM_US_GET = Called("specimen_sum", "us", "get", result, Array(readings))
End Function

' Test only: the sum of readings, in a table of which no column is required.
' readings: the readings; a range with the columns [remark], [reading_mm]
' Gives sum_mm (their sum), given (how many were given).
Public Function OVS_SPECIMEN_SUM_SI(ByVal readings As Variant) As Variant
    OVS_SPECIMEN_SUM_SI = Called("specimen_sum", "si", "value", "", Array(readings))
End Function

Public Function OVS_SPECIMEN_SUM_SI_WHY(ByVal readings As Variant) As Variant
    OVS_SPECIMEN_SUM_SI_WHY = Called("specimen_sum", "si", "why", "", Array(readings))
End Function

Public Function OVS_SPECIMEN_SUM_SI_GET(ByVal result As Variant, ByVal readings As Variant) As Variant
    OVS_SPECIMEN_SUM_SI_GET = Called("specimen_sum", "si", "get", result, Array(readings))
End Function

' Test only: the bytes of a required and of an optional file.
' file: the bytes of a file; the text of a file, or base64: and its bytes in base64
' attached: the bytes of another file; the text of a file, or base64: and its bytes in base64; may be left out
' Gives sum (the sum of the bytes of both, each times its place in its file), size (how many bytes the first has), attached_size (how many bytes the other has).
Public Function OVS_SPECIMEN_BYTES_US(ByVal file As Variant, Optional ByVal attached As Variant) As Variant
    OVS_SPECIMEN_BYTES_US = Called("specimen_bytes", "us", "value", "", Array(file, attached))
End Function

Public Function OVS_SPECIMEN_BYTES_US_WHY(ByVal file As Variant, Optional ByVal attached As Variant) As Variant
    OVS_SPECIMEN_BYTES_US_WHY = Called("specimen_bytes", "us", "why", "", Array(file, attached))
End Function

Public Function OVS_SPECIMEN_BYTES_US_GET(ByVal result As Variant, ByVal file As Variant, Optional ByVal attached As Variant) As Variant
    OVS_SPECIMEN_BYTES_US_GET = Called("specimen_bytes", "us", "get", result, Array(file, attached))
End Function

' Test only: the bytes of a required and of an optional file.
' file: the bytes of a file; the text of a file, or base64: and its bytes in base64
' attached: the bytes of another file; the text of a file, or base64: and its bytes in base64; may be left out
' Gives sum (the sum of the bytes of both, each times its place in its file), size (how many bytes the first has), attached_size (how many bytes the other has).
Public Function OVS_SPECIMEN_BYTES_SI(ByVal file As Variant, Optional ByVal attached As Variant) As Variant
    OVS_SPECIMEN_BYTES_SI = Called("specimen_bytes", "si", "value", "", Array(file, attached))
End Function

Public Function OVS_SPECIMEN_BYTES_SI_WHY(ByVal file As Variant, Optional ByVal attached As Variant) As Variant
    OVS_SPECIMEN_BYTES_SI_WHY = Called("specimen_bytes", "si", "why", "", Array(file, attached))
End Function

Public Function OVS_SPECIMEN_BYTES_SI_GET(ByVal result As Variant, ByVal file As Variant, Optional ByVal attached As Variant) As Variant
    OVS_SPECIMEN_BYTES_SI_GET = Called("specimen_bytes", "si", "get", result, Array(file, attached))
End Function
