/*
 * liboverslab: computation engine for pouring new concrete floors over old ones.
 *
 * Made from the sources; do not edit.
 *
 * Every function that can fail gives a status: 0 is success, other numbers are the constants OVS_... below; a function
 * that makes something gives NULL instead and writes the status to `status`, which may be NULL.
 *
 * Numbers are double in the unit that the argument's name ends with; counts and words are int, a word by its constant.
 * Inputs come first, by value or const; outputs follow. A pointer may be NULL only where it is said. On failure outputs
 * stay as they were, but a text buffer is emptied and bad elements of an array become NaN (int: -1).
 *
 * `msg`, `msg_len`: a buffer for one line of at most 200 bytes of ASCII that says which argument is refused, what was given
 * and what is allowed; empty on success; NULL, 0 where it is not wanted. The reason in full comes from the function
 * whose name ends in _why, called with the same inputs.
 *
 * Text comes in as UTF-8 with its length in bytes and no zero byte. Text goes out into a buffer of the caller, always
 * terminated and never cut inside a character; `needed` (may be NULL) gets the bytes needed with the terminator. A
 * NULL buffer of length 0 asks for `needed` alone. A text that is of no use cut short gives OVS_BUFFER_SHORT.
 *
 * Pointers to ovs_... types are made by the library and freed by the _free function of their type, once; free takes NULL.
 * What they point to never changes, so threads may share it. The library keeps no state between calls, starts no threads,
 * reads no file, environment or clock, and prints nothing.
 *
 * Beside the statuses listed with it, any function may give OVS_NULL_POINTER, OVS_LENGTH_NEGATIVE, or OVS_INTERNAL for a
 * fault of the library itself.
 */

#ifndef OVERSLAB_H
#define OVERSLAB_H

/**
 * The status of success.
 */
#define OVS_OK 0

/**
 * The number of the ABI that this header describes; compare it with ovs_abi_version() once after loading.
 */
#define OVS_ABI_VERSION 0

/**
 * A buffer of this many bytes holds every message whole.
 */
#define OVS_MESSAGE_SIZE 201

/**
 * A cell with nothing in it.
 */
#define OVS_CELL_EMPTY 0

/**
 * A cell with a number.
 */
#define OVS_CELL_NUMBER 1

/**
 * A cell with a text.
 */
#define OVS_CELL_TEXT 2

/**
 * A cell whose inputs are refused, among others that are not; its number is the status.
 */
#define OVS_CELL_REFUSED 3

/**
 * Status: the unit is not known.
 */
#define OVS_UNIT_UNKNOWN 10

/**
 * Status: a number stands without its unit.
 */
#define OVS_UNIT_MISSING 11

/**
 * Status: the unit belongs to another quantity.
 */
#define OVS_UNIT_WRONG 12

/**
 * Status: the text cannot be read as a quantity.
 */
#define OVS_NOT_READABLE 13

/**
 * Status: a comma stands where it could be a decimal comma.
 */
#define OVS_DECIMAL_COMMA 14

/**
 * Status: the number is not finite.
 */
#define OVS_NOT_FINITE 15

/**
 * Status: the quantity cannot be below zero.
 */
#define OVS_NEGATIVE 16

/**
 * Status: the value lies outside its range.
 */
#define OVS_OUT_OF_RANGE 17

/**
 * Status: an empty cell or a blank where a value is wanted.
 */
#define OVS_EMPTY_CELL 18

/**
 * Status: a zero in a place where an empty cell is more likely.
 */
#define OVS_ZERO_REFUSED 19

/**
 * Status: the word is not one of the choices.
 */
#define OVS_WORD_UNKNOWN 20

/**
 * Status: a whole number is wanted.
 */
#define OVS_NOT_A_COUNT 21

/**
 * Status: the list is empty.
 */
#define OVS_EMPTY_LIST 22

/**
 * Status: lists that belong together differ in length.
 */
#define OVS_LENGTH_MISMATCH 23

/**
 * Status: the value is of another kind than the port takes.
 */
#define OVS_KIND_MISMATCH 24

/**
 * Status: the key is not known.
 */
#define OVS_KEY_UNKNOWN 25

/**
 * Status: a required value is missing.
 */
#define OVS_KEY_MISSING 26

/**
 * Status: the text is not valid TOML or JSON.
 */
#define OVS_SYNTAX 27

/**
 * Status: a name is given twice.
 */
#define OVS_KEY_REPEATED 28

/**
 * Status: the schema version is not known.
 */
#define OVS_VERSION_UNKNOWN 29

/**
 * Status: two values say the same thing differently.
 */
#define OVS_CONTRADICTION 30

/**
 * Status: the outline crosses itself.
 */
#define OVS_OUTLINE_CROSSES 40

/**
 * Status: the outline has too few corners or no area.
 */
#define OVS_OUTLINE_TOO_FEW 41

/**
 * Status: a hole leaves the outline or meets another hole.
 */
#define OVS_HOLE_OUTSIDE 42

/**
 * Status: the wall lengths do not close.
 */
#define OVS_OUTLINE_OPEN 43

/**
 * Status: no figure has these sides and diagonals.
 */
#define OVS_DIAGONAL_IMPOSSIBLE 44

/**
 * Status: two heights stand at one place.
 */
#define OVS_TWO_HEIGHTS 45

/**
 * Status: a shot lies outside the outline.
 */
#define OVS_SHOT_OUTSIDE 46

/**
 * Status: too few shots for a surface.
 */
#define OVS_TOO_FEW_SHOTS 47

/**
 * Status: all shots lie on one line.
 */
#define OVS_COLLINEAR_SHOTS 48

/**
 * Status: the level book does not close within its tolerance.
 */
#define OVS_CLOSURE_EXCEEDED 49

/**
 * Status: the level book lacks a reading it needs.
 */
#define OVS_BOOK_INCOMPLETE 50

/**
 * Status: the work reaches too far beyond the shots.
 */
#define OVS_BEYOND_SHOTS 51

/**
 * Status: a step in the old slab is not described well enough.
 */
#define OVS_STEP_UNRESOLVED 52

/**
 * Status: a zone leaves the surveyed outline.
 */
#define OVS_REGION_OUTSIDE 53

/**
 * Status: no edge of the outline has this name.
 */
#define OVS_EDGE_UNKNOWN 60

/**
 * Status: the finish is not determined by what was given.
 */
#define OVS_FINISH_UNDETERMINED 61

/**
 * Status: the finish is given in two ways.
 */
#define OVS_FINISH_TWICE 62

/**
 * Status: a pointer is null.
 */
#define OVS_NULL_POINTER 90

/**
 * Status: a length or a count passed over the border is negative.
 */
#define OVS_LENGTH_NEGATIVE 91

/**
 * Status: the bytes are not UTF-8.
 */
#define OVS_NOT_TEXT 92

/**
 * Status: no operation has this name.
 */
#define OVS_OPERATION_UNKNOWN 93

/**
 * Status: the buffer for the results is too short.
 */
#define OVS_BUFFER_SHORT 94

/**
 * Status: a fault of the library itself.
 */
#define OVS_INTERNAL 99

/**
 * Note: the result lies outside the range the formula is stated for.
 */
#define OVS_NOTE_OUTSIDE_FORMULA 1

/**
 * Note: part of the work lies beyond the shots, its height is extended.
 */
#define OVS_NOTE_BEYOND_SHOTS 2

/**
 * Note: more than 30 % of the work lies beyond the shots.
 */
#define OVS_NOTE_MUCH_BEYOND_SHOTS 3

/**
 * Note: part of the work lies in triangles that leave the outline.
 */
#define OVS_NOTE_UNSURVEYED 4

/**
 * Note: shots at one place were taken as their mean.
 */
#define OVS_NOTE_PLACES_MERGED 5

/**
 * Note: a shot a little outside the outline was used.
 */
#define OVS_NOTE_SHOT_NEAR_OUTLINE 6

/**
 * Note: a line between two shots on a wall was split.
 */
#define OVS_NOTE_EDGE_SPLIT 7

/**
 * Note: the old slab stands above the finish somewhere.
 */
#define OVS_NOTE_HIGH_SPOTS 8

/**
 * Note: the value is under the published guidance.
 */
#define OVS_NOTE_BELOW_GUIDANCE 9

/**
 * Note: heights were rounded to what can be set out.
 */
#define OVS_NOTE_ROUNDED 10

/**
 * Note: measurements that do not agree were adjusted.
 */
#define OVS_NOTE_ADJUSTED 11

/**
 * Note: a value was taken, not measured.
 */
#define OVS_NOTE_ASSUMED 12

/**
 * Note: the last truck carries a small load.
 */
#define OVS_NOTE_SHORT_LOAD 13

/**
 * Note: a limit could not be read in its source: confirm locally.
 */
#define OVS_NOTE_CONFIRM_LOCALLY 14

/**
 * The result `net` (yd3 or m3): sum of what is poured.
 */
#define OVS_ORDER_NET 0

/**
 * The result `figured` (yd3 or m3): net volume and allowances.
 */
#define OVS_ORDER_FIGURED 1

/**
 * The result `ordered` (yd3 or m3): figured volume rounded up to the step.
 */
#define OVS_ORDER_ORDERED 2

/**
 * The result `spare` (yd3 or m3): ordered over figured.
 */
#define OVS_ORDER_SPARE 3

/**
 * The result `loads`: truck loads.
 */
#define OVS_ORDER_LOADS 4

/**
 * The result `last` (yd3 or m3): what the last truck carries.
 */
#define OVS_ORDER_LAST 5

/**
 * The result `allowed`: each allowance as a volume.
 */
#define OVS_ORDER_ALLOWED 6

/**
 * The column `name` of `allowed`: what it is for.
 */
#define OVS_ORDER_ALLOWED_NAME 0

/**
 * The column `volume` of `allowed` (yd3 or m3): how much.
 */
#define OVS_ORDER_ALLOWED_VOLUME 1

/**
 * How many results there are.
 */
#define OVS_ORDER_RESULTS 7

/**
 * An answer. Its results are numbered by the constants of its operation.
 */
typedef struct ovs_answer ovs_answer;

#ifdef __cplusplus
extern "C" {
#endif /* __cplusplus */

/**
 * The number of the ABI that the library was built with. It grows when a function changes or goes, not when one is added.
 */
int ovs_abi_version(void);

/**
 * Writes the version of the library: `0.1.0`.
 *
 * Returns 0, OVS_BUFFER_SHORT, OVS_NULL_POINTER or OVS_LENGTH_NEGATIVE.
 */
int ovs_version(char *text, int text_len);

/**
 * Writes the name of a status and what it means: `OUT_OF_RANGE: the value lies outside its range`.
 *
 * Returns 0, OVS_OUT_OF_RANGE where there is no such status, OVS_BUFFER_SHORT, OVS_NULL_POINTER or OVS_LENGTH_NEGATIVE.
 */
int ovs_status_text(int status,
                    char *text,
                    int text_len);

/**
 * Writes the name of a note and what it means.
 *
 * Returns 0, OVS_OUT_OF_RANGE where there is no such note, OVS_BUFFER_SHORT, OVS_NULL_POINTER or OVS_LENGTH_NEGATIVE.
 */
int ovs_note_text(int note,
                  char *text,
                  int text_len);

/**
 * Every result that is a number, a count or a word, by its place, in US units; NaN for the others.
 *
 * - `values`, `values_len`, out: as many as there is room for.
 */
int ovs_answer_values_us(const ovs_answer *answer, double *values, int values_len, char *msg, int msg_len);

/**
 * Every result that is a number, a count or a word, by its place, in SI units; NaN for the others.
 *
 * - `values`, `values_len`, out: as many as there is room for.
 */
int ovs_answer_values_si(const ovs_answer *answer, double *values, int values_len, char *msg, int msg_len);

/**
 * A result that is a number, in US units.
 *
 * Returns 0, OVS_OUT_OF_RANGE for no such result, OVS_KIND_MISMATCH for another kind, OVS_KEY_MISSING where the answer has
 * none, as do all functions that read one result.
 */
int ovs_answer_number_us(const ovs_answer *answer,
                         int result,
                         double *number,
                         char *msg,
                         int msg_len);

/**
 * A result that is a number, in SI units.
 */
int ovs_answer_number_si(const ovs_answer *answer, int result, double *number, char *msg, int msg_len);

/**
 * A result that is a count, or the number of a word.
 */
int ovs_answer_count(const ovs_answer *answer, int result, int *count, char *msg, int msg_len);

/**
 * A result that is a text, or a word.
 */
int ovs_answer_text(const ovs_answer *answer,
                    int result,
                    char *text,
                    int text_len,
                    int *needed,
                    char *msg,
                    int msg_len);

/**
 * How many rows a result that is a table has.
 */
int ovs_answer_rows(const ovs_answer *answer, int result, int *rows, char *msg, int msg_len);

/**
 * A column of numbers, counts or words of a result that is a table, in US units; NaN for an empty cell.
 *
 * - `cells`, `cells_len`, out: at least as many places as the table has rows, else OVS_BUFFER_SHORT.
 */
int ovs_answer_column_us(const ovs_answer *answer,
                         int result,
                         int column,
                         double *cells,
                         int cells_len,
                         char *msg,
                         int msg_len);

/**
 * A column of numbers, counts or words of a result that is a table, in SI units; NaN for an empty cell.
 *
 * - `cells`, `cells_len`, out: at least as many places as the table has rows, else OVS_BUFFER_SHORT.
 */
int ovs_answer_column_si(const ovs_answer *answer,
                         int result,
                         int column,
                         double *cells,
                         int cells_len,
                         char *msg,
                         int msg_len);

/**
 * A text, or a word, of a result that is a table; OVS_EMPTY_CELL where that row has none.
 */
int ovs_answer_column_text(const ovs_answer *answer,
                           int result,
                           int column,
                           int row,
                           char *text,
                           int text_len,
                           int *needed,
                           char *msg,
                           int msg_len);

/**
 * The numbers of the notes, in their order.
 *
 * - `notes`, `notes_len`, out: as many as there is room for.
 * - `count`, out: how many there are; may be null.
 */
int ovs_answer_notes(const ovs_answer *answer, int *notes, int notes_len, int *count, char *msg, int msg_len);

/**
 * The sentence of a note, the first being 0.
 */
int ovs_answer_note_text(const ovs_answer *answer,
                         int note,
                         char *text,
                         int text_len,
                         int *needed,
                         char *msg,
                         int msg_len);

/**
 * The whole answer as JSON, in US units: results, notes, where each result comes from, what was taken, not given.
 */
int ovs_answer_to_json_us(const ovs_answer *answer,
                          char *json,
                          int json_len,
                          int *needed,
                          char *msg,
                          int msg_len);

/**
 * The whole answer as JSON, in SI units: results, notes, where each result comes from, what was taken, not given.
 */
int ovs_answer_to_json_si(const ovs_answer *answer,
                          char *json,
                          int json_len,
                          int *needed,
                          char *msg,
                          int msg_len);

/**
 * Frees an answer; null is nothing.
 */
void ovs_answer_free(ovs_answer *answer);

/**
 * Calls any operation by its name. A bare number in `args_json` is in the unit of its port in US units, as are the results.
 *
 * - `operation`, `operation_len`: its name in the table: without `ovs_` and `_us`.
 * - `args_json`, `args_len`: an object of the ports: `{"name": value}`; a text such as `"2 1/2 in"` says its own unit.
 * - `out`, `out_len`, `needed`: an object of `results`, `notes`, `basis` and `taken`.
 *
 * Returns 0, OVS_OPERATION_UNKNOWN, OVS_SYNTAX, OVS_BUFFER_SHORT, or what the operation refuses.
 */
int ovs_call_us(const char *operation,
                int operation_len,
                const char *args_json,
                int args_len,
                char *out,
                int out_len,
                int *needed,
                char *msg,
                int msg_len);

/**
 * Calls any operation by its name, as ovs_call_us, in SI units.
 */
int ovs_call_si(const char *operation,
                int operation_len,
                const char *args_json,
                int args_len,
                char *out,
                int out_len,
                int *needed,
                char *msg,
                int msg_len);

/**
 * Calls any operation as a spreadsheet does: cells in, cells out.
 *
 * - `request`, `request_len`: `{"operation": its name, "system": "us" | "si", "want": "value" | "why" | "get", "result":
 *   a name, "empty": "null" | "zero", "arguments": [...]}`. An argument is a cell (null, number, text, truth value) or rows
 *   of cells; one per port, those at the end may be left out. `result` goes with `get`. `empty` says how the sheet hands
 *   over a lone empty cell; left out, as a zero, which is then refused where an empty cell is likelier.
 * - `answer`, `answer_len`, `needed`: `{"cells": rows}`, where a refused place among others is `{"code": status}`; or
 *   `{"failure": {"code", "name", "path", "line", "sentence"}}` with `row` and `column` of the range where they are known.
 *
 * Returns 0, OVS_BUFFER_SHORT, or the code of the failure, which then stands in the answer.
 */
int ovs_sheet(const char *request,
              int request_len,
              char *answer,
              int answer_len,
              int *needed);

/**
 * Calls any operation as ovs_sheet does, for callers that do not read JSON: the cells come back in arrays, row by row.
 *
 * - `request`, `request_len`: as for ovs_sheet.
 * - `numbers`, `kinds`, `capacity`: the number and the kind of each cell, OVS_CELL_...; `capacity` elements each.
 * - `rows`, `columns`, out: how many; written also where the capacity or the buffer is too short.
 * - `texts`, `texts_len`, `needed`, out: the texts of all text cells in order, with a line feed between; a line feed
 *   within a text comes as a blank.
 *
 * Returns 0, OVS_BUFFER_SHORT, or the code of the failure, which `msg` then tells.
 */
int ovs_sheet_values(const char *request,
                     int request_len,
                     double *numbers,
                     int *kinds,
                     int capacity,
                     int *rows,
                     int *columns,
                     char *texts,
                     int texts_len,
                     int *needed,
                     char *msg,
                     int msg_len);

/**
 * The fall of a surface that loses a height over a run.
 *
 * Equation: fall = drop / run.
 * Taken for granted: drop and run are measured plumb and level, not along the slope.
 *
 * - `drop_in` (in): height lost; at least 0 in, at most 1200 in.
 * - `run_ft` (ft): level distance over which it is lost; more than 0 ft, at most 10000 ft.
 * - `fall_in_per_ft` (in/ft), out: fall of the surface.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example: ovs_fall_us(2, 20, ...) gives fall_in_per_ft = 0.1.
 */
int ovs_fall_us(double drop_in, double run_ft, double *fall_in_per_ft, int *notes, char *msg, int msg_len);

/**
 * The fall of a surface that loses a height over a run.
 *
 * Equation: fall = drop / run.
 * Taken for granted: drop and run are measured plumb and level, not along the slope.
 *
 * - `drop_mm` (mm): height lost; at least 0 mm, at most 30480 mm.
 * - `run_m` (m): level distance over which it is lost; more than 0 m, at most 3048 m.
 * - `fall_percent` (%), out: fall of the surface.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example: ovs_fall_si(50.8, 6.096, ...) gives fall_percent = 0.833333.
 */
int ovs_fall_si(double drop_mm, double run_m, double *fall_percent, int *notes, char *msg, int msg_len);

/**
 * ovs_fall_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_fall_us_array(const double *drop_in,
                      const double *run_ft,
                      double *fall_in_per_ft,
                      int *notes,
                      int n,
                      int *bad_index,
                      char *msg,
                      int msg_len);

/**
 * ovs_fall_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_fall_si_array(const double *drop_mm,
                      const double *run_m,
                      double *fall_percent,
                      int *notes,
                      int n,
                      int *bad_index,
                      char *msg,
                      int msg_len);

/**
 * Why ovs_fall_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_fall_us_why(double drop_in, double run_ft, char *text, int text_len, int *needed);

/**
 * Why ovs_fall_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_fall_si_why(double drop_mm, double run_m, char *text, int text_len, int *needed);

/**
 * The height that a surface loses over a run at a fall.
 *
 * Equation: drop = fall x run.
 * Taken for granted: the run is measured level, not along the slope.
 *
 * - `fall_in_per_ft` (in/ft): fall of the surface; at least 0 in/ft, at most 12 in/ft.
 * - `run_ft` (ft): level distance; more than 0 ft, at most 10000 ft.
 * - `drop_in` (in), out: height lost.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example: ovs_drop_us(0.125, 32, ...) gives drop_in = 4.
 */
int ovs_drop_us(double fall_in_per_ft, double run_ft, double *drop_in, int *notes, char *msg, int msg_len);

/**
 * The height that a surface loses over a run at a fall.
 *
 * Equation: drop = fall x run.
 * Taken for granted: the run is measured level, not along the slope.
 *
 * - `fall_percent` (%): fall of the surface; at least 0 %, at most 100 %.
 * - `run_m` (m): level distance; more than 0 m, at most 3048 m.
 * - `drop_mm` (mm), out: height lost.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example: ovs_drop_si(1.04167, 9.7536, ...) gives drop_mm = 101.6.
 */
int ovs_drop_si(double fall_percent, double run_m, double *drop_mm, int *notes, char *msg, int msg_len);

/**
 * ovs_drop_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_drop_us_array(const double *fall_in_per_ft,
                      const double *run_ft,
                      double *drop_in,
                      int *notes,
                      int n,
                      int *bad_index,
                      char *msg,
                      int msg_len);

/**
 * ovs_drop_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_drop_si_array(const double *fall_percent,
                      const double *run_m,
                      double *drop_mm,
                      int *notes,
                      int n,
                      int *bad_index,
                      char *msg,
                      int msg_len);

/**
 * Why ovs_drop_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_drop_us_why(double fall_in_per_ft, double run_ft, char *text, int text_len, int *needed);

/**
 * Why ovs_drop_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_drop_si_why(double fall_percent, double run_m, char *text, int text_len, int *needed);

/**
 * The volume between old slab and finish over one triangle, split where they meet.
 *
 * Equation: net = area (t1 + t2 + t3) / 3; one corner of the other sign: high = (area / 3) t3^3 / ((t3 - t1) (t3 -
 * t2)).
 * Taken for granted: both surfaces are plane over the triangle.
 *
 * - `area_ft2` (ft2): plan area of the triangle; more than 0 ft2, at most 10763910.4167 ft2.
 * - `thickness_1_in` (in): thickness at the first corner; at least -3937.00787402 in, at most 3937.00787402 in.
 * - `thickness_2_in` (in): thickness at the second corner; at least -3937.00787402 in, at most 3937.00787402 in.
 * - `thickness_3_in` (in): thickness at the third corner; at least -3937.00787402 in, at most 3937.00787402 in.
 * - `net_ft3` (ft3), out: fill less high spots.
 * - `fill_ft3` (ft3), out: fill above the old slab.
 * - `high_ft3` (ft3), out: old slab above the finish.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example: ovs_triangular_prism_us(50, 3, 4, 5, ...) gives net_ft3 = 16.6667, fill_ft3 = 16.6667, high_ft3 = 0.
 */
int ovs_triangular_prism_us(double area_ft2,
                            double thickness_1_in,
                            double thickness_2_in,
                            double thickness_3_in,
                            double *net_ft3,
                            double *fill_ft3,
                            double *high_ft3,
                            int *notes,
                            char *msg,
                            int msg_len);

/**
 * The volume between old slab and finish over one triangle, split where they meet.
 *
 * Equation: net = area (t1 + t2 + t3) / 3; one corner of the other sign: high = (area / 3) t3^3 / ((t3 - t1) (t3 -
 * t2)).
 * Taken for granted: both surfaces are plane over the triangle.
 *
 * - `area_m2` (m2): plan area of the triangle; more than 0 m2, at most 1000000 m2.
 * - `thickness_1_mm` (mm): thickness at the first corner; at least -100000 mm, at most 100000 mm.
 * - `thickness_2_mm` (mm): thickness at the second corner; at least -100000 mm, at most 100000 mm.
 * - `thickness_3_mm` (mm): thickness at the third corner; at least -100000 mm, at most 100000 mm.
 * - `net_m3` (m3), out: fill less high spots.
 * - `fill_m3` (m3), out: fill above the old slab.
 * - `high_m3` (m3), out: old slab above the finish.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example: ovs_triangular_prism_si(4.64515, 76.2, 101.6, 127, ...) gives net_m3 = 0.471947, fill_m3 = 0.471947, high_m3 = 0.
 */
int ovs_triangular_prism_si(double area_m2,
                            double thickness_1_mm,
                            double thickness_2_mm,
                            double thickness_3_mm,
                            double *net_m3,
                            double *fill_m3,
                            double *high_m3,
                            int *notes,
                            char *msg,
                            int msg_len);

/**
 * ovs_triangular_prism_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_triangular_prism_us_array(const double *area_ft2,
                                  const double *thickness_1_in,
                                  const double *thickness_2_in,
                                  const double *thickness_3_in,
                                  double *net_ft3,
                                  double *fill_ft3,
                                  double *high_ft3,
                                  int *notes,
                                  int n,
                                  int *bad_index,
                                  char *msg,
                                  int msg_len);

/**
 * ovs_triangular_prism_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_triangular_prism_si_array(const double *area_m2,
                                  const double *thickness_1_mm,
                                  const double *thickness_2_mm,
                                  const double *thickness_3_mm,
                                  double *net_m3,
                                  double *fill_m3,
                                  double *high_m3,
                                  int *notes,
                                  int n,
                                  int *bad_index,
                                  char *msg,
                                  int msg_len);

/**
 * Why ovs_triangular_prism_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_triangular_prism_us_why(double area_ft2,
                                double thickness_1_in,
                                double thickness_2_in,
                                double thickness_3_in,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * Why ovs_triangular_prism_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_triangular_prism_si_why(double area_m2,
                                double thickness_1_mm,
                                double thickness_2_mm,
                                double thickness_3_mm,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * The volume of a body between two end sections with a third half way.
 *
 * Equation: volume = length (first + 4 middle + last) / 6.
 * Taken for granted: the sides are plane or warped evenly between the sections.
 *
 * - `length_ft` (ft): length between the end sections; more than 0 ft, at most 32808.3989501 ft.
 * - `first_ft2` (ft2): area of the first section; at least 0 ft2, at most 10763910.4167 ft2.
 * - `middle_ft2` (ft2): area of the section half way; at least 0 ft2, at most 10763910.4167 ft2.
 * - `last_ft2` (ft2): area of the last section; at least 0 ft2, at most 10763910.4167 ft2.
 * - `volume_yd3` (yd3), out: volume of the body.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: V = L (A1 + 4 Am + A2) / 6: Surveying textbooks, earthwork volumes (any), prismoidal formula.
 * Since 0.1.0.
 * Example: ovs_prismoid_us(12, 2, 1, 0, ...) gives volume_yd3 = 0.444444.
 */
int ovs_prismoid_us(double length_ft,
                    double first_ft2,
                    double middle_ft2,
                    double last_ft2,
                    double *volume_yd3,
                    int *notes,
                    char *msg,
                    int msg_len);

/**
 * The volume of a body between two end sections with a third half way.
 *
 * Equation: volume = length (first + 4 middle + last) / 6.
 * Taken for granted: the sides are plane or warped evenly between the sections.
 *
 * - `length_m` (m): length between the end sections; more than 0 m, at most 10000 m.
 * - `first_m2` (m2): area of the first section; at least 0 m2, at most 1000000 m2.
 * - `middle_m2` (m2): area of the section half way; at least 0 m2, at most 1000000 m2.
 * - `last_m2` (m2): area of the last section; at least 0 m2, at most 1000000 m2.
 * - `volume_m3` (m3), out: volume of the body.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: V = L (A1 + 4 Am + A2) / 6: Surveying textbooks, earthwork volumes (any), prismoidal formula.
 * Since 0.1.0.
 * Example: ovs_prismoid_si(3.6576, 0.185806, 0.092903, 0, ...) gives volume_m3 = 0.339802.
 */
int ovs_prismoid_si(double length_m,
                    double first_m2,
                    double middle_m2,
                    double last_m2,
                    double *volume_m3,
                    int *notes,
                    char *msg,
                    int msg_len);

/**
 * ovs_prismoid_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_prismoid_us_array(const double *length_ft,
                          const double *first_ft2,
                          const double *middle_ft2,
                          const double *last_ft2,
                          double *volume_yd3,
                          int *notes,
                          int n,
                          int *bad_index,
                          char *msg,
                          int msg_len);

/**
 * ovs_prismoid_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_prismoid_si_array(const double *length_m,
                          const double *first_m2,
                          const double *middle_m2,
                          const double *last_m2,
                          double *volume_m3,
                          int *notes,
                          int n,
                          int *bad_index,
                          char *msg,
                          int msg_len);

/**
 * Why ovs_prismoid_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_prismoid_us_why(double length_ft,
                        double first_ft2,
                        double middle_ft2,
                        double last_ft2,
                        char *text,
                        int text_len,
                        int *needed);

/**
 * Why ovs_prismoid_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_prismoid_si_why(double length_m,
                        double first_m2,
                        double middle_m2,
                        double last_m2,
                        char *text,
                        int text_len,
                        int *needed);

/**
 * How many truck loads an order takes, and what the last one carries.
 *
 * Equation: loads = ordered / capacity, rounded up; last = ordered - (loads - 1) capacity.
 * Taken for granted: every truck but the last is full.
 *
 * - `ordered_yd3` (yd3): volume ordered; more than 0 yd3, at most 130795.061931 yd3.
 * - `capacity_yd3` (yd3): what one truck carries; at least 0.130795061931 yd3, at most 26.1590123863 yd3.
 * - `loads`, out: truck loads.
 * - `last_yd3` (yd3), out: what the last truck carries.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: a full truck carries about 10 yd3: NRMCA fleet survey (2017), table 4: typical full load 9.8 yd3, range
 * 8.2 to 11.8, as quoted elsewhere.
 * Since 0.1.0.
 * Example: ovs_trucks_us(14, 9.8, ...) gives loads = 2, last_yd3 = 4.2.
 */
int ovs_trucks_us(double ordered_yd3,
                  double capacity_yd3,
                  int *loads,
                  double *last_yd3,
                  int *notes,
                  char *msg,
                  int msg_len);

/**
 * How many truck loads an order takes, and what the last one carries.
 *
 * Equation: loads = ordered / capacity, rounded up; last = ordered - (loads - 1) capacity.
 * Taken for granted: every truck but the last is full.
 *
 * - `ordered_m3` (m3): volume ordered; more than 0 m3, at most 100000 m3.
 * - `capacity_m3` (m3): what one truck carries; at least 0.1 m3, at most 20 m3.
 * - `loads`, out: truck loads.
 * - `last_m3` (m3), out: what the last truck carries.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: a full truck carries about 10 yd3: NRMCA fleet survey (2017), table 4: typical full load 9.8 yd3, range
 * 8.2 to 11.8, as quoted elsewhere.
 * Since 0.1.0.
 * Example: ovs_trucks_si(10.7038, 7.49264, ...) gives loads = 2, last_m3 = 3.21113.
 */
int ovs_trucks_si(double ordered_m3,
                  double capacity_m3,
                  int *loads,
                  double *last_m3,
                  int *notes,
                  char *msg,
                  int msg_len);

/**
 * ovs_trucks_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_trucks_us_array(const double *ordered_yd3,
                        const double *capacity_yd3,
                        int *loads,
                        double *last_yd3,
                        int *notes,
                        int n,
                        int *bad_index,
                        char *msg,
                        int msg_len);

/**
 * ovs_trucks_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_trucks_si_array(const double *ordered_m3,
                        const double *capacity_m3,
                        int *loads,
                        double *last_m3,
                        int *notes,
                        int n,
                        int *bad_index,
                        char *msg,
                        int msg_len);

/**
 * Why ovs_trucks_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_trucks_us_why(double ordered_yd3, double capacity_yd3, char *text, int text_len, int *needed);

/**
 * Why ovs_trucks_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_trucks_si_why(double ordered_m3, double capacity_m3, char *text, int text_len, int *needed);

/**
 * What to order: net volume, named allowances, the plant's step, trucks.
 *
 * Equation: figured = net + sum(net x share); ordered = figured rounded up to the step.
 * Taken for granted: allowances are shares of the net volume and add up.
 *
 * - `floor_yd3` (yd3): volume of the floor; at least 0 yd3, at most 130795.061931 yd3.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `extras`: volumes poured beside the floor; may be left out.
 *   - `name` of `extras`: what it is for.
 *   - `volume` of `extras` (yd3): how much; at least 0 yd3, at most 130795.061931 yd3.
 *   - `allowances`: shares allowed on top; where left out [{"name": "waste", "share": "3 %"}], because a surveyed
 *     floor: what sticks to tools and strike-off.
 *   - `name` of `allowances`: what it is for.
 *   - `share` of `allowances` (%): share of the net volume; at least 0 %, at most 50 %.
 *   - `step` (yd3): the step the plant sells by; at least 0.00130795061931 yd3, at most 6.53975309657 yd3; where
 *     left out 1/4 yd3, because plants usually sell by the quarter yard.
 *   - `capacity` (yd3): what one truck carries; at least 0.130795061931 yd3, at most 26.1590123863 yd3; where left
 *     out 10 yd3, because a full truck carries about so much.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_ORDER_NET (yd3): sum of what is poured.
 *   - OVS_ORDER_FIGURED (yd3): net volume and allowances.
 *   - OVS_ORDER_ORDERED (yd3): figured volume rounded up to the step.
 *   - OVS_ORDER_SPARE (yd3): ordered over figured.
 *   - OVS_ORDER_LOADS: truck loads.
 *   - OVS_ORDER_LAST (yd3): what the last truck carries.
 *   - OVS_ORDER_ALLOWED: each allowance as a volume.
 *
 * Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE.
 * Basis: 5 to 10 % for waste and uneven thickness on ground; less where the surface is surveyed: Extension lesson
 * on estimating concrete (after Cooper, Agricultural Mechanics), waste and uneven thickness.
 * Basis: plants sell in steps of 1/4 yd3: common practice, no source.
 * Basis: a full truck carries about 10 yd3: NRMCA fleet survey (2017), table 4: typical full load 9.8 yd3, range
 * 8.2 to 11.8, as quoted elsewhere.
 * Since 0.1.0.
 * Example, as JSON: {"floor":"8.78 yd3","extras":[{"name":"ramp","volume":"0.59 yd3"}]}
 */
ovs_answer *ovs_order_us(double floor_yd3,
                         const char *options_json,
                         int options_len,
                         int *status,
                         int *notes,
                         int notes_len,
                         char *msg,
                         int msg_len);

/**
 * What to order: net volume, named allowances, the plant's step, trucks.
 *
 * Equation: figured = net + sum(net x share); ordered = figured rounded up to the step.
 * Taken for granted: allowances are shares of the net volume and add up.
 *
 * - `floor_m3` (m3): volume of the floor; at least 0 m3, at most 100000 m3.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `extras`: volumes poured beside the floor; may be left out.
 *   - `name` of `extras`: what it is for.
 *   - `volume` of `extras` (m3): how much; at least 0 m3, at most 100000 m3.
 *   - `allowances`: shares allowed on top; where left out [{"name": "waste", "share": "3 %"}], because a surveyed
 *     floor: what sticks to tools and strike-off.
 *   - `name` of `allowances`: what it is for.
 *   - `share` of `allowances` (%): share of the net volume; at least 0 %, at most 50 %.
 *   - `step` (m3): the step the plant sells by; at least 0.001 m3, at most 5 m3; where left out 1/4 yd3, because
 *     plants usually sell by the quarter yard.
 *   - `capacity` (m3): what one truck carries; at least 0.1 m3, at most 20 m3; where left out 10 yd3, because a
 *     full truck carries about so much.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_ORDER_NET (m3): sum of what is poured.
 *   - OVS_ORDER_FIGURED (m3): net volume and allowances.
 *   - OVS_ORDER_ORDERED (m3): figured volume rounded up to the step.
 *   - OVS_ORDER_SPARE (m3): ordered over figured.
 *   - OVS_ORDER_LOADS: truck loads.
 *   - OVS_ORDER_LAST (m3): what the last truck carries.
 *   - OVS_ORDER_ALLOWED: each allowance as a volume.
 *
 * Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE.
 * Basis: 5 to 10 % for waste and uneven thickness on ground; less where the surface is surveyed: Extension lesson
 * on estimating concrete (after Cooper, Agricultural Mechanics), waste and uneven thickness.
 * Basis: plants sell in steps of 1/4 yd3: common practice, no source.
 * Basis: a full truck carries about 10 yd3: NRMCA fleet survey (2017), table 4: typical full load 9.8 yd3, range
 * 8.2 to 11.8, as quoted elsewhere.
 * Since 0.1.0.
 * Example, as JSON: {"floor":"8.78 yd3","extras":[{"name":"ramp","volume":"0.59 yd3"}]}
 */
ovs_answer *ovs_order_si(double floor_m3,
                         const char *options_json,
                         int options_len,
                         int *status,
                         int *notes,
                         int notes_len,
                         char *msg,
                         int msg_len);

/**
 * Why ovs_order_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_order_us_why(double floor_yd3,
                     const char *options_json,
                     int options_len,
                     char *text,
                     int text_len,
                     int *needed);

/**
 * Why ovs_order_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_order_si_why(double floor_m3,
                     const char *options_json,
                     int options_len,
                     char *text,
                     int text_len,
                     int *needed);

#ifdef __cplusplus
} /* extern "C" */
#endif /* __cplusplus */

#endif  /* OVERSLAB_H */
