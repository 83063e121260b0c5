/*
 * A C program that uses every kind of port, in and out, by the test-only operations. It is C99 and C++ alike, ends with
 * 0 where every check holds, and prints what failed.
 */
#include "overslab_specimen.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

static int passed = 0;
static int failed = 0;

static void check(int holds, const char *what) {
    if (holds) {
        passed++;
    } else {
        failed++;
        printf("FAILED: %s\n", what);
    }
}

static int length(const char *text) { return (int)strlen(text); }

static int near(double a, double b) { return fabs(a - b) <= 1e-12 * (1.0 + fabs(b)); }

static void about_itself(void) {
    char text[OVS_MESSAGE_SIZE];
    check(ovs_abi_version() == OVS_ABI_VERSION, "the ABI is the header's");
    check(ovs_version(text, sizeof text) == OVS_OK && strchr(text, '.') != NULL, "the version");
    check(ovs_status_text(OVS_OUT_OF_RANGE, text, sizeof text) == OVS_OK, "a status in words");
    check(strncmp(text, "OUT_OF_RANGE: ", 14) == 0, "the name of a status");
    check(ovs_note_text(OVS_NOTE_ASSUMED, text, sizeof text) == OVS_OK, "a note in words");
    check(ovs_status_text(OVS_OK, NULL, 0) == OVS_OK, "no buffer");
}

static void a_scalar(void) {
    double total = -1.0;
    int colour = -1, count = -1, note = -1, needed = 0;
    char msg[OVS_MESSAGE_SIZE], why[1000];
    int status = ovs_specimen_scalar_us(1.5, 4, OVS_SPECIMEN_SCALAR_COLOUR_DARK_BLUE, &total, &colour, &count, &note, msg,
                                        sizeof msg);
    check(status == OVS_OK && msg[0] == '\0' && note == 0, "a scalar call succeeds");
    check(near(total, 0.5) && colour == OVS_SPECIMEN_SCALAR_COLOUR_DARK_BLUE && count == 5, "its results");
    status = ovs_specimen_scalar_si(25.4, 200, OVS_SPECIMEN_SCALAR_COLOUR_RED, &total, &colour, &count, &note, NULL, 0);
    check(status == OVS_OK && near(total, 5.08) && note == OVS_NOTE_OUTSIDE_FORMULA, "a scalar call with a note");
    status = ovs_specimen_scalar_us(-1.5, 4, 0, &total, &colour, &count, &note, msg, sizeof msg);
    check(status == OVS_OUT_OF_RANGE && near(total, 5.08), "a refusal leaves the outputs");
    check(strstr(msg, "step = -1.5 in") != NULL, "the message has the number and its unit");
    check(ovs_specimen_scalar_us_why(-1.5, 4, 0, why, sizeof why, &needed) == OVS_OUT_OF_RANGE, "the reason in full");
    check(needed == length(why) + 1, "the bytes that the reason needs");
    check(ovs_specimen_scalar_us(1.0, 1, 2, &total, &colour, &count, NULL, NULL, 0) == OVS_WORD_UNKNOWN, "no such word");
    check(ovs_specimen_scalar_us(1.0, 1, 0, NULL, &colour, &count, NULL, NULL, 0) == OVS_NULL_POINTER, "a null result");
}

static void arrays(void) {
    double step[3] = {1.0, -1.0, 3.0}, total[3];
    int times[3] = {12, 12, 500}, colour[3] = {0, 1, 1}, same[3], count[3], notes[3], bad = 7;
    char msg[OVS_MESSAGE_SIZE];
    int status = ovs_specimen_scalar_us_array(step, times, colour, total, same, count, notes, 3, &bad, msg, sizeof msg);
    check(status == OVS_OUT_OF_RANGE && bad == 1, "the first bad element is told");
    check(strstr(msg, "element 1") != NULL, "in the message as well");
    check(near(total[0], 1.0) && isnan(total[1]) && near(total[2], 125.0), "a bad element spoils itself only");
    check(same[1] == -1 && count[1] == -1 && notes[1] == 0, "ints of a bad element");
    check(notes[0] == 0 && notes[2] == OVS_NOTE_OUTSIDE_FORMULA, "a note of its own for each element");
    status = ovs_specimen_scalar_us_array(NULL, NULL, NULL, NULL, NULL, NULL, NULL, 0, &bad, NULL, 0);
    check(status == OVS_OK && bad == -1, "no elements");
}

static ovs_specimen *a_record(void) {
    const double at[3] = {1.0, 2.0, 1.5};
    const char *options = "{\"label\": \"oak\", \"rows\": {\"hits\": [null, 3, 4], \"colour\": [\"red\", null, \"dark blue\"]}}";
    int status = -1, notes[4] = {9, 9, 9, 9};
    char msg[OVS_MESSAGE_SIZE];
    ovs_specimen *made = ovs_specimen_from_table_us(at, 3, options, length(options), &status, notes, 4, msg, sizeof msg);
    check(made != NULL && status == OVS_OK && msg[0] == '\0', "a record is made");
    check(notes[0] == OVS_NOTE_ASSUMED && notes[1] == 0 && notes[3] == 0, "its notes, then zeros");
    check(ovs_specimen_from_table_us(at, 0, NULL, 0, &status, NULL, 0, msg, sizeof msg) == NULL, "a table without rows");
    check(status == OVS_EMPTY_LIST, "its status");
    check(ovs_specimen_from_table_us(at, 3, "{\"lable\": \"x\"}", 14, &status, NULL, 0, msg, sizeof msg) == NULL,
          "an option that is none");
    check(status == OVS_KEY_UNKNOWN && strstr(msg, "label") != NULL, "names the near one");
    return made;
}

static void reading_a_record(const ovs_specimen *made) {
    double values[OVS_SPECIMEN_FIELDS], shares[2];
    char text[100], json[200], msg[OVS_MESSAGE_SIZE];
    int rows = 0, needed = 0, status = -1;
    ovs_specimen *again;
    check(ovs_specimen_values_us(made, values, OVS_SPECIMEN_FIELDS, NULL, 0) == OVS_OK, "its values");
    check(near(values[OVS_SPECIMEN_SIZE], 24.0) && values[OVS_SPECIMEN_LETTERS] == 3.0, "by their places");
    check(isnan(values[OVS_SPECIMEN_LABEL]), "a text is no number");
    check(ovs_specimen_values_si(made, values, 1, NULL, 0) == OVS_OK && near(values[0], 609.6), "in the other units");
    check(ovs_specimen_field_text(made, OVS_SPECIMEN_LABEL, text, sizeof text, NULL, NULL, 0) == OVS_OK, "its text");
    check(strcmp(text, "oak") == 0, "the text given");
    check(ovs_specimen_field_rows(made, OVS_SPECIMEN_WEIGHTS, &rows, NULL, 0) == OVS_OK && rows == 2, "its table");
    check(ovs_specimen_field_column_us(made, OVS_SPECIMEN_WEIGHTS, OVS_SPECIMEN_WEIGHTS_SHARE, shares, 2, NULL, 0) == OVS_OK,
          "a column");
    check(near(shares[0], 25.0) && near(shares[1], 75.0), "its cells");
    check(ovs_specimen_field_column_us(made, OVS_SPECIMEN_WEIGHTS, 0, shares, 1, NULL, 0) == OVS_BUFFER_SHORT, "no room");
    check(ovs_specimen_to_json(made, NULL, 0, &needed, NULL, 0) == OVS_OK && needed > 10, "the bytes of its JSON");
    check(ovs_specimen_to_json(made, json, sizeof json, NULL, NULL, 0) == OVS_OK, "its JSON");
    again = ovs_specimen_from_json(json, length(json), &status, msg, sizeof msg);
    check(again != NULL && status == OVS_OK, "comes back");
    check(ovs_specimen_values_si(again, values, 1, NULL, 0) == OVS_OK && near(values[0], 609.6), "as the same");
    ovs_specimen_free(again);
}

static void every_kind(const ovs_specimen *made) {
    const double at[2] = {1.0, 2.5};
    const char *options = "{\"waste\": 10, \"again\": 3, \"shade\": \"dark blue\", \"remark\": \" birch\", "
                          "\"more\": [{\"share\": \"25 %\"}], \"rows\": {\"depth\": [\"1/8 in\", null]}}";
    double volume = 0.0, depth[2];
    int status = -1, count = 0, rows = 0, notes = 0, place = -1;
    char text[100], msg[OVS_MESSAGE_SIZE];
    ovs_specimen *held;
    ovs_answer *answer = ovs_specimen_every_kind_us(2.0, 2, OVS_SPECIMEN_EVERY_KIND_COLOUR_RED, "a", 1, at, 2, made, NULL,
                                                    options, length(options), &status, NULL, 0, msg, sizeof msg);
    check(answer != NULL && status == OVS_OK, "every kind goes in");
    check(ovs_answer_number_us(answer, OVS_SPECIMEN_EVERY_KIND_VOLUME, &volume, NULL, 0) == OVS_OK, "a number");
    check(near(volume, 2.7), "its value");
    check(ovs_answer_number_si(answer, OVS_SPECIMEN_EVERY_KIND_VOLUME, &volume, NULL, 0) == OVS_OK, "in the other units");
    check(near(volume, 2.7 * 0.764554857984), "its value there");
    check(ovs_answer_count(answer, OVS_SPECIMEN_EVERY_KIND_COUNT, &count, NULL, 0) == OVS_OK && count == 5, "a count");
    check(ovs_answer_count(answer, OVS_SPECIMEN_EVERY_KIND_COLOUR, &place, NULL, 0) == OVS_OK, "a word");
    check(place == OVS_SPECIMEN_EVERY_KIND_SHADE_DARK_BLUE, "its number");
    check(ovs_answer_text(answer, OVS_SPECIMEN_EVERY_KIND_LABEL, text, sizeof text, NULL, NULL, 0) == OVS_OK, "a text");
    check(strcmp(text, "a birch") == 0, "its letters");
    check(ovs_answer_rows(answer, OVS_SPECIMEN_EVERY_KIND_ROWS, &rows, NULL, 0) == OVS_OK && rows == 2, "a table");
    check(ovs_answer_column_us(answer, OVS_SPECIMEN_EVERY_KIND_ROWS, OVS_SPECIMEN_EVERY_KIND_ROWS_DEPTH, depth, 2, NULL, 0) ==
              OVS_OK,
          "a column");
    check(near(depth[0], 0.125) && isnan(depth[1]), "an empty cell is NaN");
    check(ovs_answer_notes(answer, NULL, 0, &notes, NULL, 0) == OVS_OK && notes == 1, "how many notes");
    check(ovs_answer_note_text(answer, 0, text, sizeof text, NULL, NULL, 0) == OVS_OK && text[0] != '\0', "a note in words");
    held = ovs_answer_record_specimen(answer, OVS_SPECIMEN_EVERY_KIND_SPECIMEN, &status, NULL, 0);
    check(held != NULL && status == OVS_OK, "a record out of the answer");
    ovs_answer_free(answer);
    check(ovs_specimen_field_text(held, OVS_SPECIMEN_LABEL, text, sizeof text, NULL, NULL, 0) == OVS_OK, "outlives it");
    ovs_specimen_free(held);
    check(ovs_specimen_every_kind_us(2.0, 2, 0, "a", 1, at, 2, NULL, NULL, NULL, 0, &status, NULL, 0, msg, sizeof msg) == NULL,
          "a record that is missing");
    check(status == OVS_NULL_POINTER && strstr(msg, "specimen") != NULL, "is named");
}

static void numbers_only(const ovs_specimen *made) {
    double results[OVS_SPECIMEN_NUMBERS_RESULTS];
    int notes[3] = {9, 9, 9}, needed = 0;
    char why[1000];
    int status = ovs_specimen_numbers_us(made, "{\"gap\": 6}", 10, results, OVS_SPECIMEN_NUMBERS_RESULTS, notes, 3, NULL, 0);
    check(status == OVS_OK && near(results[OVS_SPECIMEN_NUMBERS_HALF], 12.0), "numbers only");
    check(near(results[OVS_SPECIMEN_NUMBERS_GAP], 0.5) && results[OVS_SPECIMEN_NUMBERS_LETTERS] == 3.0, "each by its place");
    check(results[OVS_SPECIMEN_NUMBERS_COLOUR] == OVS_SPECIMEN_NUMBERS_COLOUR_DARK_BLUE && notes[0] == 0, "a word as well");
    status = ovs_specimen_numbers_us(made, NULL, 0, results, OVS_SPECIMEN_NUMBERS_RESULTS, notes, 3, NULL, 0);
    check(status == OVS_OK && isnan(results[OVS_SPECIMEN_NUMBERS_GAP]), "a result that is not there is NaN");
    check(notes[0] == OVS_NOTE_ASSUMED && notes[1] == OVS_NOTE_ROUNDED && notes[2] == 0, "each note once");
    check(ovs_specimen_numbers_us_why(made, NULL, 0, why, sizeof why, &needed) == OVS_OK, "what is to be known of it");
    check(strstr(why, "no gap") != NULL && needed == length(why) + 1, "in words");
}

static void readings_with_gaps(void) {
    const char *remarks = "{\"readings\": {\"remark\": [\"none\"]}}";
    double readings[3] = {1.0, 0.0, 2.5}, results[OVS_SPECIMEN_SUM_RESULTS];
    char msg[OVS_MESSAGE_SIZE];
    readings[1] = NAN;
    check(ovs_specimen_sum_us(readings, 3, NULL, 0, results, OVS_SPECIMEN_SUM_RESULTS, NULL, 0, NULL, 0) == OVS_OK, "readings");
    check(near(results[OVS_SPECIMEN_SUM_SUM], 3.5) && results[OVS_SPECIMEN_SUM_GIVEN] == 2.0, "an empty cell is NaN");
    check(ovs_specimen_sum_us(NULL, 1, remarks, length(remarks), results, 2, NULL, 0, NULL, 0) == OVS_OK,
          "a column that is not given");
    check(results[OVS_SPECIMEN_SUM_GIVEN] == 0.0, "gives nothing");
    check(ovs_specimen_sum_us(NULL, 3, NULL, 0, NULL, 0, NULL, 0, msg, sizeof msg) == OVS_NULL_POINTER, "rows of nothing");
    check(strstr(msg, "readings_reading_in") != NULL, "are named");
}

static void a_file(void) {
    const unsigned char file[4] = {0, 255, 'a', 0};
    const char *options = "{\"attached\": \"base64:/wA=\"}";
    double results[OVS_SPECIMEN_BYTES_RESULTS];
    char msg[OVS_MESSAGE_SIZE];
    check(ovs_specimen_bytes_us(file, 4, NULL, 0, results, OVS_SPECIMEN_BYTES_RESULTS, NULL, 0, NULL, 0) == OVS_OK, "a file");
    check(results[OVS_SPECIMEN_BYTES_SUM] == 2 * 255 + 3 * 97 && results[OVS_SPECIMEN_BYTES_SIZE] == 4.0, "to its last byte");
    check(isnan(results[OVS_SPECIMEN_BYTES_ATTACHED_SIZE]), "no other file");
    check(ovs_specimen_bytes_us(file, 0, options, length(options), results, 3, NULL, 0, NULL, 0) == OVS_OK, "an empty file");
    check(results[OVS_SPECIMEN_BYTES_SUM] == 255.0 && results[OVS_SPECIMEN_BYTES_ATTACHED_SIZE] == 2.0, "and one in base64");
    check(ovs_specimen_bytes_us(NULL, 0, NULL, 0, NULL, 0, NULL, 0, msg, sizeof msg) == OVS_NULL_POINTER, "no file at all");
    check(strstr(msg, "file") != NULL, "is named");
    check(ovs_specimen_bytes_us(file, -1, NULL, 0, NULL, 0, NULL, 0, msg, sizeof msg) == OVS_LENGTH_NEGATIVE, "a length below 0");
}

static void by_name(void) {
    const char *name = "specimen_scalar", *args = "{\"step\": \"1 1/2 in\", \"times\": 4, \"colour\": \"red\"}";
    char out[1000], msg[OVS_MESSAGE_SIZE];
    int needed = 0;
    int status = ovs_call_us(name, length(name), args, length(args), out, sizeof out, &needed, msg, sizeof msg);
    check(status == OVS_OK && strstr(out, "\"total_ft\":") != NULL && needed == length(out) + 1, "a call by name");
    check(ovs_call_us("specimen", 8, args, length(args), out, sizeof out, NULL, msg, sizeof msg) == OVS_OPERATION_UNKNOWN,
          "no such operation");
}

int main(void) {
    ovs_specimen *made;
    about_itself();
    a_scalar();
    arrays();
    made = a_record();
    reading_a_record(made);
    every_kind(made);
    numbers_only(made);
    readings_with_gaps();
    a_file();
    by_name();
    ovs_specimen_free(made);
    ovs_specimen_free(NULL);
    ovs_answer_free(NULL);
    printf("%d passed, %d failed\n", passed, failed);
    return failed == 0 ? 0 : 1;
}
