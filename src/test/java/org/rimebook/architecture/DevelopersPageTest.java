package org.rimebook.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.xpath.XPathConstants;
import javax.xml.xpath.XPathExpressionException;
import javax.xml.xpath.XPathFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

class DevelopersPageTest {

  private static final Path PAGE = Path.of("DEVELOPERS.md");
  private static final Path SOURCES = Path.of("src/main/java/org/rimebook");

  @Test
  void thePageListsExactlyTheDependenciesOfTheBuild()
      throws IOException, ParserConfigurationException, SAXException, XPathExpressionException {
    assertThat(Documents.firstCells(Documents.text(PAGE), "Dependencies"))
        .containsExactlyInAnyOrderElementsOf(declaredDependencies());
  }

  @Test
  void thePageListsExactlyThePackagesThereAreInTheirOrder() throws IOException {
    List<String> existing =
        Layout.ORDER.stream().filter(name -> Files.isDirectory(SOURCES.resolve(name))).toList();
    assertThat(Documents.firstCells(Documents.text(PAGE), "Packages"))
        .containsExactlyElementsOf(existing);
  }

  @Test
  void everyPackageSaysWhatItDoes() throws IOException {
    assertThat(Documents.in(SOURCES))
        .filteredOn(Files::isDirectory)
        .isNotEmpty()
        .allSatisfy(directory -> assertThat(directory.resolve("package-info.java")).exists());
  }

  private static List<String> declaredDependencies()
      throws IOException, ParserConfigurationException, SAXException, XPathExpressionException {
    Node pom =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(Path.of("pom.xml").toFile());
    NodeList names =
        (NodeList)
            XPathFactory.newInstance()
                .newXPath()
                .evaluate(
                    "/project/dependencies/dependency/artifactId", pom, XPathConstants.NODESET);
    return IntStream.range(0, names.getLength())
        .mapToObj(i -> names.item(i).getTextContent().strip())
        .toList();
  }
}
