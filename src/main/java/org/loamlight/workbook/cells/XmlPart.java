package org.loamlight.workbook.cells;

import java.io.ByteArrayInputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** One part as a stream of XML. Document types and entities of its own are not read; namespaces are not told apart. */
final class XmlPart {
    private static final XMLInputFactory FACTORY = factory();
    /** The byte order mark some programs put before UTF-8. */
    private static final byte[] MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private final String name;
    private final XMLStreamReader reader;

    private XmlPart(String name, XMLStreamReader reader) {
        this.name = name;
        this.reader = reader;
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        return factory;
    }

    static XmlPart of(String name, Parts parts) throws NoWorkbook {
        byte[] content = parts.get(name);
        try {
            return new XmlPart(name, FACTORY.createXMLStreamReader(characters(content)));
        } catch (XMLStreamException e) {
            throw NoWorkbook.broken(Parts.shown(name));
        }
    }

    /** Spreadsheets write UTF-8. It is decoded here, for the parser prints what it finds wrong with it. */
    private static Reader characters(byte[] content) {
        int mark = content.length >= MARK.length && Arrays.equals(content, 0, MARK.length, MARK, 0, MARK.length) ? MARK.length : 0;
        return new InputStreamReader(new ByteArrayInputStream(content, mark, content.length - mark),
                StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT));
    }

    /** Moves to the next beginning or end of an element; whether there is one. */
    boolean next() throws NoWorkbook {
        try {
            while (reader.hasNext()) {
                int event = reader.next();
                if (event == XMLStreamConstants.START_ELEMENT || event == XMLStreamConstants.END_ELEMENT) {
                    return true;
                }
            }
            return false;
        } catch (XMLStreamException e) {
            throw NoWorkbook.broken(Parts.shown(name));
        }
    }

    boolean begins(String element) {
        return reader.isStartElement() && reader.getLocalName().equals(element);
    }

    boolean ends(String element) {
        return reader.isEndElement() && reader.getLocalName().equals(element);
    }

    /** The attribute of the element that begins here, by its name without a prefix. */
    Optional<String> attribute(String key) {
        for (int i = 0; i < reader.getAttributeCount(); i++) {
            if (reader.getAttributeLocalName(i).equals(key)) {
                return Optional.of(reader.getAttributeValue(i));
            }
        }
        return Optional.empty();
    }

    /** An attribute that is a whole number; the given one when it is absent. */
    int number(String key, int absent) throws NoWorkbook {
        try {
            return attribute(key).map(Integer::parseInt).orElse(absent);
        } catch (NumberFormatException e) {
            throw NoWorkbook.broken(Parts.shown(name));
        }
    }

    /** The text of the element that begins here; the reading goes on behind it. */
    String text() throws NoWorkbook {
        try {
            return reader.getElementText();
        } catch (XMLStreamException e) {
            throw NoWorkbook.broken(Parts.shown(name));
        }
    }

    NoWorkbook broken() {
        return NoWorkbook.broken(Parts.shown(name));
    }
}
