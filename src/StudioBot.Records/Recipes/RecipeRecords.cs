using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Records.Acts;
using StudioBot.Records.Materials;

namespace StudioBot.Records.Recipes;

/// <summary>The studio's saved mixtures.</summary>
public sealed class RecipeRecords
{
    private readonly SqliteConnection connection;
    private readonly KeptRows kept;

    internal RecipeRecords(SqliteConnection connection)
    {
        this.connection = connection;
        kept = new KeptRows(connection);
    }

    private const string Saved = """
        select recipe.id, recipe.name, material.name as makes
        from recipe
        left join material on material.id = recipe.makes_material_id
        order by recipe.name
        """;

    private const string SavedParts = """
        select part.recipe_id as whole, part.material_id as materialId, material.name as material,
               part.microlitres, part.milligrams
        from recipe_part as part
        join material on material.id = part.material_id
        order by part.recipe_id, part.position
        """;

    /// <summary>All recipes, by name.</summary>
    public IReadOnlyList<Recipe> All()
    {
        var parts = connection.Query<PartRow>(SavedParts).ToLookup(row => row.Whole, row => row.From());
        return [.. connection.Query<Row>(Saved).Select(row => row.From([.. parts[row.Id]]))];
    }

    private const string NewOne = """
        insert into recipe (name, makes_material_id)
        values ($name, $makes)
        returning id
        """;

    private const string NewPart = """
        insert into recipe_part (recipe_id, position, material_id, microlitres, milligrams)
        values ($whole, $position, $material, $microlitres, $milligrams)
        """;

    /// <summary>Saves a mixture.</summary>
    /// <param name="name">As people type it, 1 to 60 characters.</param>
    /// <param name="parts">At least one, each of another material, above zero, by volume or by mass.</param>
    /// <param name="makes">The mixture it makes; none for colours that go straight into a pour.</param>
    /// <param name="act">The act that saves it; none where books open with it.</param>
    /// <exception cref="ArgumentException">There are no parts.</exception>
    /// <exception cref="SqliteException">The name is taken, a material stands twice, or a part is zero or counted.
    /// </exception>
    public Recipe Add(string name, IReadOnlyList<Part> parts, Material? makes = null, Act? act = null)
    {
        if (parts.Count == 0)
        {
            throw new ArgumentException("A recipe has at least one part.", nameof(parts));
        }

        var id = connection.ExecuteScalar<long>(NewOne, new { name, makes = makes?.Id });
        connection.Execute(NewPart, PartRow.Columns(id, parts));
        kept.Added(act, KeptTable.Recipe, id);
        kept.Added(act, KeptTable.RecipeParts, id);
        return new Recipe(id, name, makes?.Name, parts);
    }

    private const string DropParts = """
        delete from recipe_part
        where recipe_id = $recipe
        """;

    /// <summary>From now on this recipe has these parts.</summary>
    /// <exception cref="ArgumentException">There are no parts.</exception>
    /// <exception cref="SqliteException">A material stands twice, or a part is zero or counted.</exception>
    public void Change(Recipe recipe, IReadOnlyList<Part> parts, Act act)
    {
        if (parts.Count == 0)
        {
            throw new ArgumentException("A recipe has at least one part.", nameof(parts));
        }

        kept.Change(act, KeptTable.RecipeParts, recipe.Id, () =>
        {
            connection.Execute(DropParts, new { recipe = recipe.Id });
            connection.Execute(NewPart, PartRow.Columns(recipe.Id, parts));
        });
    }

    private sealed record Row(long Id, string Name, string? Makes)
    {
        public Recipe From(IReadOnlyList<Part> parts) => new(Id, Name, Makes, parts);
    }
}
