package org.loamlight.workbook.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loamlight.setup.JsonPlace;
import org.loamlight.setup.JsonValue;

/** A value with the members that lead to it: "place" in "water". */
record Given(List<String> members, JsonValue value) {

    /**
     * The object that has these values at its members.
     *
     * @param at where the object stands
     */
    static JsonValue.JsonObject object(List<Given> given, JsonPlace at) {
        Map<String, List<Given>> byMember = new LinkedHashMap<>();
        given.forEach(one -> byMember.computeIfAbsent(one.members.get(0), member -> new ArrayList<>()).add(one));
        Map<String, JsonValue> members = new LinkedHashMap<>();
        byMember.forEach((member, inner) -> members.put(member, member(inner, at.path().isEmpty() ? member : at.path() + "." + member)));
        return new JsonValue.JsonObject(at, members);
    }

    private static JsonValue member(List<Given> given, String path) {
        Given first = given.get(0);
        if (first.members.size() == 1) {
            return first.value;
        }
        List<Given> inner = given.stream().map(one -> new Given(one.members.subList(1, one.members.size()), one.value)).toList();
        JsonPlace at = first.value.at();
        return object(inner, new JsonPlace(at.line(), at.column(), path, at.sheet()));
    }
}
